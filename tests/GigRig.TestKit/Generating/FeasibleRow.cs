using CsCheck;
using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.TestKit.Building;

namespace GigRig.TestKit.Generating;

/// <summary>Devices side by side, each with room for a plug all round, and a board just large enough or a little larger.</summary>
internal sealed record FeasibleRow(Board Board, ValueList<Placement> Placements)
{
    public static PlugSizes Plugs { get; } = new(new(2.Mm, 2.Mm), new(1.Mm, 2.Mm));

    /// <summary>A plug stands out 2 mm at most, and at a corner reaches 1 mm beyond the side.</summary>
    private const int Around = 2;

    public static Gen<FeasibleRow> Of(ValueList<Device> devices) =>
        from turns in GenMany.Each(devices.Count, i => Gen.OneOf([.. devices[i].Turns]))
        from gaps in Gen.Int[0, 1].Array[devices.Count]
        from right in Gen.Int[0, 2]
        from rear in Gen.Int[0, 2]
        from railed in Gen.Bool
        select Lay(devices, turns, gaps, right, rear, railed);

    private static FeasibleRow Lay(ValueList<Device> devices, ValueList<Turn> turns, int[] gaps, int right, int rear, bool railed)
    {
        var (x, depth) = (0, 0);
        var placements = new List<Placement>();
        for (var i = 0; i < devices.Count; i++)
        {
            var size = devices[i].Size.Turned(turns[i]);
            x += Around + gaps[i];
            placements.Add(new(devices[i].Id, new(x.Mm, Around.Mm), turns[i]));
            x += size.Width.Value + Around;
            depth = Math.Max(depth, size.Depth.Value + 2 * Around);
        }

        var board = A.Board(x + right, depth + rear);
        return new(railed ? board.Railed(0, depth + rear) : board, placements.ToValueList());
    }
}
