using CsCheck;
using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;

namespace GigRig.TestKit.Generating;

/// <summary>Fixes some of a question's things somewhere on its board, at random: seldom where one would want them, and often in each other's way.</summary>
public static class GenFixed
{
    /// <param name="most">Fixes so many things at most, the supply on top among them.</param>
    public static Gen<RigProblemDraft> Within(RigProblemDraft draft, int most) =>
        from order in Gen.Shuffle(Standing(draft).ToArray())
        from count in Gen.Int[0, most]
        from places in GenMany.Each(Math.Min(count, order.Length), i => PlaceOf(order[i].Id, order[i].Size, order[i].Turns, draft.Board))
        select draft with { Options = draft.Options with { Fixed = places.OfType<Placement>().ToValueList() } };

    private static IEnumerable<(GearId Id, BodySize Size, ValueList<Turn> Turns)> Standing(RigProblemDraft draft)
    {
        foreach (var device in draft.Devices.Where(device => !draft.Options.Ban.Contains(device.Id)))
            yield return (device.Id, device.Size, device.Turns);
        if (draft.Supply is { Mount: SupplyMount.Top, Size: { } size } supply)
            yield return (supply.Id, size, [Turn.None, Turn.Quarter]);
    }

    /// <summary>Null where it is too large for the board that way.</summary>
    private static Gen<Placement?> PlaceOf(GearId id, BodySize size, ValueList<Turn> turns, Board board) =>
        from turn in Gen.OneOf([.. turns])
        let body = size.Turned(turn)
        from x in Gen.Int[0, Math.Max(0, board.Width.Value - body.Width.Value)]
        from y in Gen.Int[0, Math.Max(0, board.Depth.Value - body.Depth.Value)]
        select body.Width > board.Width || body.Depth > board.Depth ? null : new Placement(id, new(x.Mm, y.Mm), turn);
}
