using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;

namespace GigRig.Domain.Rules.Standing;

internal sealed class BoardLoadRule : IRule
{
    public string Id => RuleIds.BoardLoad;

    public string Sentence => "The board carries no more than it is made for.";

    public IEnumerable<Violation> Check(RigProblem problem, Rig rig)
    {
        if (problem.Board.MaxLoad is not { } most)
            yield break;
        var load = problem.DevicesOn(rig).Aggregate(Grams.Zero, (sum, device) => sum + device.Mass);
        // Under or on top, the board carries the supply as well.
        if (problem.Supply is { Mount: not SupplyMount.Off } supply)
            load += supply.Mass;
        if (load > most)
            yield return new(Id, [problem.Board.Id], $"{load - most}", $"The board carries {load}; it is made for {most}.");
    }
}
