using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;

namespace GigRig.Domain.Geometry;

/// <summary>What a device takes up on the board, unturned, from its own front-left corner: body, plugs, jacks and foot switches.</summary>
/// <param name="Plugs">One rectangle for each side jack whose plug takes space. They lie outside the body.</param>
public sealed record Outline(BodySize Size, ValueList<Rect> Plugs, ValueList<PlacedJack> Jacks, ValueList<Point> Switches)
{
    public static Outline Of(Device device, PlugSizes plugs) => new(
        device.Size,
        device.Jacks.Where(jack => jack.Side != Side.Top).Select(jack => PlugAt(jack, device.Size, plugs.Of(jack.Use))).Where(TakesSpace).ToValueList(),
        device.Jacks.Select(jack => new PlacedJack(jack, TipOf(jack, device.Size, plugs.Of(jack.Use).Out))).ToValueList(),
        device.Switches);

    /// <summary>A body with nothing beside it.</summary>
    public static Outline Of(BodySize size) => new(size, [], [], []);

    /// <summary>Body and plugs as they lie on the board.</summary>
    public (Rect Body, ValueList<Rect> Plugs) Placed(Placement placement) =>
        (BodyAt(placement), Plugs.Select(plug => Lay(plug, placement)).ToValueList());

    public Rect BodyAt(Placement placement)
    {
        var size = Size.Turned(placement.Turn);
        return new(placement.At.X, placement.At.Y, size.Width, size.Depth);
    }

    /// <summary>The jacks as they lie on the board, in the order of the device's own list.</summary>
    public ValueList<PlacedJack> PlacedJacks(Placement placement) =>
        Jacks.Select(jack => jack with { Tip = Lay(jack.Tip, placement) }).ToValueList();

    public ValueList<Point> PlacedSwitches(Placement placement) => Switches.Select(point => Lay(point, placement)).ToValueList();

    private Rect Lay(Rect rect, Placement placement) => rect.TurnedWith(Size, placement.Turn).MovedBy(placement.At);

    private Point Lay(Point point, Placement placement)
    {
        var laid = Lay(new Rect(point.X, point.Y, Millimetres.Zero, Millimetres.Zero), placement);
        return new(laid.X, laid.Y);
    }

    private static bool TakesSpace(Rect plug) => plug.Width > Millimetres.Zero && plug.Depth > Millimetres.Zero;

    private static Rect PlugAt(Jack jack, BodySize body, PlugSize plug)
    {
        var start = jack.At - (plug.Width.Value / 2).Mm;
        return jack.Side switch
        {
            Side.Left => new(-plug.Out, start, plug.Out, plug.Width),
            Side.Right => new(body.Width, start, plug.Out, plug.Width),
            Side.Front => new(start, -plug.Out, plug.Width, plug.Out),
            _ => new(start, body.Depth, plug.Width, plug.Out),
        };
    }

    private static Point TipOf(Jack jack, BodySize body, Millimetres standsOut) => jack.Side switch
    {
        Side.Left => new(-standsOut, jack.At),
        Side.Right => new(body.Width + standsOut, jack.At),
        Side.Front => new(jack.At, -standsOut),
        Side.Rear => new(jack.At, body.Depth + standsOut),
        _ => new(jack.At, (body.Depth.Value / 2).Mm),
    };
}
