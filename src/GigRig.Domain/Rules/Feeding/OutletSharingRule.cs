using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;

namespace GigRig.Domain.Rules.Feeding;

internal sealed class OutletSharingRule : IRule
{
    public string Id => RuleIds.OutletSharing;

    public string Sentence => "Devices share an outlet through splitters only, and only where it gives direct current at one setting.";

    public IEnumerable<Violation> Check(RigProblem problem, Rig rig)
    {
        foreach (var (outlet, connections) in Connection.ByOutlet(problem, rig).Where(pair => pair.Connections.Count > 1))
        {
            var names = connections.Select(connection => connection.Device.Name).Listed();
            if (outlet.Type == CurrentType.Ac)
                yield return Refused(connections, $"{names} share outlet {outlet.Id}; an AC outlet is never split.");
            if (connections.Any(connection => connection.Joined))
                yield return Refused(connections, $"{names} share outlet {outlet.Id}; an outlet joined with another feeds one device only.");
            if (connections.SelectMany(connection => SettingsAt(connection, outlet)).Distinct().Count() > 1)
                yield return Refused(connections, $"{names} share outlet {outlet.Id} but ask for different settings of it.");
        }
    }

    private static IEnumerable<Millivolts> SettingsAt(Connection connection, Outlet outlet) =>
        connection.Feed.Outlets.Zip(connection.Feed.Settings).Where(pair => pair.First == outlet.Id).Select(pair => pair.Second);

    private Violation Refused(List<Connection> connections, string sentence) =>
        new(Id, connections.Select(connection => connection.Device.Id).ToValueList(), "", sentence);
}
