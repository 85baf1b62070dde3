using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;

namespace GigRig.TestKit.Judging;

/// <summary>A thing on the board as the square millimetres it takes, each named by its front-left corner.</summary>
internal sealed record NaiveBody(string Id, int Front, int Rear, int Height, int Mass, HashSet<(int X, int Y)> Body, HashSet<(int X, int Y)> Plugs, List<(int X, int Y)> Switches)
{
    public static List<NaiveBody> All(RigProblem problem, Rig rig)
    {
        var all = new List<NaiveBody>();
        foreach (var placement in rig.Placements)
            foreach (var device in problem.Devices.Where(d => d.Id.Value == placement.Id.Value))
                all.Add(Of(device.Id.Value, device.Size, device.Mass.Value, placement, PlugCells(device, problem.Options.Plugs), [.. device.Switches.Select(s => (s.X.Value, s.Y.Value))]));
        if (rig.Supply is not null && problem.Supply is { Mount: SupplyMount.Top } supply)
            all.Add(Of(supply.Id.Value, supply.Size!.Value, supply.Mass.Value, rig.Supply, [], []));
        return all;
    }

    public static IEnumerable<(int X, int Y)> Cells(int x, int y, int width, int depth)
    {
        for (var i = 0; i < width; i++)
            for (var j = 0; j < depth; j++)
                yield return (x + i, y + j);
    }

    private static NaiveBody Of(string id, BodySize size, int mass, Placement at, IEnumerable<(int X, int Y)> plugs, List<(int X, int Y)> switches)
    {
        var (width, depth) = (size.Width.Value, size.Depth.Value);
        var quarters = (int)at.Turn / 90;
        // A cell is a square, so that its corner moves by one less than a point would.
        var body = Cells(0, 0, width, depth).Select(c => Move(Turned(c, quarters, width - 1, depth - 1), at)).ToHashSet();
        return new(
            id,
            body.Min(c => c.Y),
            body.Max(c => c.Y) + 1,
            size.Height.Value,
            mass,
            body,
            plugs.Select(c => Move(Turned(c, quarters, width - 1, depth - 1), at)).ToHashSet(),
            [.. switches.Select(p => Move(Turned(p, quarters, width, depth), at))]);
    }

    /// <summary>Clockwise as seen from above, a quarter at a time; the far corner of the body is at (right, rear).</summary>
    private static (int X, int Y) Turned((int X, int Y) p, int quarters, int right, int rear)
    {
        for (var i = 0; i < quarters; i++)
        {
            p = (p.Y, right - p.X);
            (right, rear) = (rear, right);
        }

        return p;
    }

    private static (int X, int Y) Move((int X, int Y) p, Placement at) => (p.X + at.At.X.Value, p.Y + at.At.Y.Value);

    private static IEnumerable<(int X, int Y)> PlugCells(Device device, PlugSizes plugs)
    {
        foreach (var jack in device.Jacks)
        {
            var plug = jack.Use == JackUse.Power ? plugs.Power : plugs.Audio;
            var (standsOut, width) = (plug.Out.Value, plug.Width.Value);
            var start = jack.At.Value - width / 2;
            var cells = jack.Side switch
            {
                Side.Left => Cells(-standsOut, start, standsOut, width),
                Side.Right => Cells(device.Size.Width.Value, start, standsOut, width),
                Side.Front => Cells(start, -standsOut, width, standsOut),
                Side.Rear => Cells(start, device.Size.Depth.Value, width, standsOut),
                _ => [],
            };
            foreach (var cell in cells)
                yield return cell;
        }
    }
}
