using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;

namespace GigRig.Domain.Rules.Standing;

internal sealed class AllowedTurnRule : IRule
{
    public string Id => RuleIds.AllowedTurn;

    public string Sentence => "Everything stands turned in a way it is allowed to.";

    private static readonly ValueList<Turn> SupplyTurns = [Turn.None, Turn.Quarter];

    public IEnumerable<Violation> Check(RigProblem problem, Rig rig)
    {
        foreach (var placement in rig.Placements)
            if (problem.FindDevice(placement.Id) is { } device && !device.Turns.Contains(placement.Turn))
                yield return Misturned(device.Id, device.Name, placement.Turn, device.Turns);
        if (rig.Supply is { } at && problem.Supply is { } supply && !SupplyTurns.Contains(at.Turn))
            yield return Misturned(supply.Id, supply.Name, at.Turn, SupplyTurns);
    }

    private Violation Misturned(GearId id, string name, Turn turn, ValueList<Turn> allowed) =>
        new(Id, [id], $"{(int)turn}°", $"{name} is turned by {(int)turn}°; it may stand at {allowed.Select(t => $"{(int)t}°").Listed()} only.");
}
