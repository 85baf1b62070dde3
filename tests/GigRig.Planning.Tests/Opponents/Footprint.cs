using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;

namespace GigRig.Planning.Tests.Opponents;

/// <summary>What a thing covers, square millimetre by square millimetre, from the front-left corner of its body; turned by turning each of them.</summary>
/// <param name="Plugs">Reach outside the body.</param>
internal sealed record Footprint(int Width, int Depth, (int X, int Y)[] Plugs, (int X, int Y)[] Switches)
{
    public static Footprint Of(BodySize size) => new(size.Width.Value, size.Depth.Value, [], []);

    public static Footprint Of(Device device, PlugSizes plugs)
    {
        var (width, depth) = (device.Size.Width.Value, device.Size.Depth.Value);
        return new(
            width,
            depth,
            [.. device.Jacks.SelectMany(jack => PlugAt(jack, plugs.Of(jack.Use), width, depth)).Distinct()],
            [.. device.Switches.Select(s => (s.X.Value, s.Y.Value))]);
    }

    public Footprint Turned(Turn turn)
    {
        var turned = this;
        for (var quarter = 0; quarter < (int)turn / 90; quarter++)
            turned = turned.TurnedByAQuarter();
        return turned;
    }

    /// <summary>Clockwise: what lay to the left lies at the rear.</summary>
    private Footprint TurnedByAQuarter() => new(
        Depth,
        Width,
        [.. Plugs.Select(cell => (cell.Y, Width - 1 - cell.X))],
        [.. Switches.Select(point => (point.Y, Width - point.X))]);

    private static IEnumerable<(int X, int Y)> PlugAt(Jack jack, PlugSize plug, int width, int depth)
    {
        for (var along = 0; along < plug.Width.Value; along++)
            for (var away = 0; away < plug.Out.Value; away++)
            {
                var at = jack.At.Value - plug.Width.Value / 2 + along;
                switch (jack.Side)
                {
                    case Side.Left:
                        yield return (-1 - away, at);
                        break;
                    case Side.Right:
                        yield return (width + away, at);
                        break;
                    case Side.Front:
                        yield return (at, -1 - away);
                        break;
                    case Side.Rear:
                        yield return (at, depth + away);
                        break;
                }
            }
    }
}
