using GigRig.Domain.Rigs;

namespace GigRig.Domain.Rules.Feeding;

internal sealed class OutletCurrentRule : IRule
{
    public string Id => RuleIds.OutletCurrent;

    public string Sentence => "No outlet is asked for more current than it can give, headroom included.";

    public IEnumerable<Violation> Check(RigProblem problem, Rig rig) =>
        SupplyLoad.Of(problem, rig).Outlets.Where(load => load.Draw > load.Gives).Select(load => new Violation(
            Id,
            load.Devices,
            $"{load.Draw - load.Gives}",
            $"{load.Devices.Select(problem.NameOf).Listed()} {(load.Devices.Count == 1 ? "draws" : "draw")} {load.Draw}; {Source(load)} {load.Gives}."));

    private static string Source(OutletLoad load) => load.Join == OutletJoin.Single
        ? $"outlet {load.Outlets[0].Id} gives"
        : $"outlets {load.Outlets.Select(outlet => outlet.Id).Listed()} together give";
}
