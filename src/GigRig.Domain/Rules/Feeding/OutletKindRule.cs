using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;

namespace GigRig.Domain.Rules.Feeding;

internal sealed class OutletKindRule : IRule
{
    public string Id => RuleIds.OutletKind;

    public string Sentence => "A device for direct current gets direct current, one for alternating current gets alternating current.";

    public IEnumerable<Violation> Check(RigProblem problem, Rig rig) =>
        from connection in Connection.In(problem, rig)
        from outlet in connection.Outlets
        where outlet.Type != connection.Need.Type
        select new Violation(
            Id,
            [connection.Device.Id],
            "",
            $"{connection.Device.Name} needs {Word(connection.Need.Type)}; outlet {outlet.Id} gives {Word(outlet.Type)}, which can destroy it.");

    private static string Word(CurrentType type) => type == CurrentType.Ac ? "AC" : "DC";
}
