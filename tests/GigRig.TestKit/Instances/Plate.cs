using GigRig.Domain;
using GigRig.Domain.Events;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;

namespace GigRig.TestKit.Instances;

/// <summary>A published cutting or packing question told in our words: plate = board, piece = device with a role of its own.</summary>
internal static class Plate
{
    /// <summary>Masses are zero and heights one, so that nothing but the rectangles can decide.</summary>
    public static RigProblemDraft Ask(string name, int width, int depth, bool turning, NeedLevel level, IEnumerable<(int Width, int Depth, int Value, int Copies)> pieces)
    {
        ValueList<Turn> turns = turning ? [Turn.None, Turn.Quarter] : [Turn.None];
        var copies = pieces
            .SelectMany((piece, index) => Enumerable.Range(1, piece.Copies).Select(copy => (piece, Id: $"piece-{index + 1}-{copy}")))
            .ToList();
        return new RigProblemDraft
        {
            Board = new Board(new GearId("board"), name, width.Mm, depth.Mm, Grams.Zero, [], [], Overhang.Usual),
            Devices = copies.Select(c => Piece(c.Id, c.piece.Width, c.piece.Depth, turns)).ToValueList(),
            Event = new EventType(name, copies.Select(c => new Need(new Role(c.Id), level, c.piece.Value)).ToValueList(), [], EventLimits.None),
            Options = PlanOptions.Default with { Arrange = false },
        };
    }

    private static Device Piece(string id, int width, int depth, ValueList<Turn> turns) =>
        new(new GearId(id), id, new BodySize(width.Mm, depth.Mm, 1.Mm), Grams.Zero, turns, Power: null, Jacks: [], Bypass.True, Switches: [], [new RoleFunction(new Role(id))]);
}
