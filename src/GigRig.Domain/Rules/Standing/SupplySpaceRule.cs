using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;

namespace GigRig.Domain.Rules.Standing;

internal sealed class SupplySpaceRule : IRule
{
    public string Id => RuleIds.SupplySpace;

    public string Sentence => "The supply has its place: among the devices, or in the space under the board.";

    public IEnumerable<Violation> Check(RigProblem problem, Rig rig)
    {
        if (problem.Supply is not { } supply)
            yield break;
        if (supply.Mount == SupplyMount.Top && rig.Supply is null)
            yield return new(Id, [supply.Id], "", $"{supply.Name} goes on top of the board but has no place on it.");
        if (supply.Mount != SupplyMount.Top && rig.Supply is not null)
            yield return new(Id, [supply.Id], "", $"{supply.Name} has a place on top of the board but is not mounted there.");
        if (supply is { Mount: SupplyMount.Under, Size: { } size })
            foreach (var (what, has, leaves) in Lacks(size, problem.Board))
                yield return new(Id, [supply.Id], $"{has - leaves}", $"{supply.Name} is {has} {what}; under the board there are {leaves}.");
    }

    /// <summary>Lies either way round, whichever lacks least.</summary>
    private static IEnumerable<(string What, Millimetres Has, Millimetres Leaves)> Lacks(BodySize size, Board board)
    {
        var flat = new[] { Turn.None, Turn.Quarter }
            .Select(turn => LacksFlat(size.Turned(turn), board).ToList())
            .MinBy(lacks => lacks.Sum(lack => lack.Has.Value - lack.Leaves.Value))!;
        return board.ClearanceUnder is { } under && size.Height > under ? flat.Append(("high", size.Height, under)) : flat;
    }

    private static IEnumerable<(string What, Millimetres Has, Millimetres Leaves)> LacksFlat(BodySize size, Board board)
    {
        if (size.Width > board.Width)
            yield return ("wide", size.Width, board.Width);
        if (size.Depth > board.Depth)
            yield return ("deep", size.Depth, board.Depth);
    }
}
