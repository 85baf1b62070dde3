using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;

namespace GigRig.Domain.Rules.Feeding;

/// <summary>The signal leads join the grounds of all devices, so a device whose ground is the plus pole shorts any return it shares.</summary>
internal sealed class IsolatedOutletRule : IRule
{
    public string Id => RuleIds.IsolatedOutlet;

    public string Sentence => "A centre-positive device, and one on a reversing lead, has an isolated outlet to itself.";

    public IEnumerable<Violation> Check(RigProblem problem, Rig rig)
    {
        foreach (var (outlet, connections) in Connection.ByOutlet(problem, rig))
            foreach (var (feed, device, need, _, _) in connections.Where(NeedsItsOwn))
            {
                var why = feed.Reversed ? "is on a reversing lead" : "is centre positive";
                if (!problem.Supply!.IsIsolated(outlet))
                    yield return new(Id, [device.Id], "", $"{device.Name} {why}; outlet {outlet.Id} shares its return with others, and that would short the supply.");
                if (connections.Count > 1)
                    yield return new(Id, [device.Id], "", $"{device.Name} {why}; it shares outlet {outlet.Id} with {connections.Where(c => c.Feed != feed).Select(c => c.Device.Name).Listed()}, and that would short the supply.");
            }
    }

    private static bool NeedsItsOwn(Connection connection) =>
        connection.Need.Type == CurrentType.Dc && (connection.Feed.Reversed || connection.Need.Polarity == Polarity.Positive);
}
