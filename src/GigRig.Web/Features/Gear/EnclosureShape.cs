using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Units;

namespace GigRig.Web.Features.Gear;

/// <summary>A usual size of a floor device's box, to start from.</summary>
/// <remarks>
/// Small die-cast, compact, wide, large, double and multi-switch follow footprints published in makers' lists of enclosure sizes; mini and rocker are
/// common practice, no source. Heights and jack places are rules of thumb: measure your own.
/// </remarks>
public sealed record EnclosureShape(string Name, BodySize Size, Grams Mass, int SwitchCount = 1)
{
    public static IReadOnlyList<EnclosureShape> All { get; } =
    [
        new("Mini", new(43.Mm, 93.Mm, 45.Mm), 200.G),
        new("Small", new(60.Mm, 112.Mm, 50.Mm), 300.G),
        new("Compact", new(70.Mm, 122.Mm, 55.Mm), 400.G),
        new("Wide", new(84.Mm, 130.Mm, 55.Mm), 450.G),
        new("Lying", new(120.Mm, 95.Mm, 55.Mm), 450.G, 2),
        new("Large", new(140.Mm, 173.Mm, 60.Mm), 800.G, 2),
        new("Double", new(173.Mm, 159.Mm, 60.Mm), 1000.G, 2),
        new("Rocker", new(100.Mm, 250.Mm, 80.Mm), 1200.G, 0),
        new("Many switches", new(254.Mm, 152.Mm, 60.Mm), 1300.G, 4),
    ];

    /// <summary>Input right, output left, as the signal usually runs; power in the middle of the rear.</summary>
    public ValueList<Jack> Jacks =>
    [
        new(JackUse.In, Side.Right, Millimetres.From(Size.Depth.Value * 6 / 10)),
        new(JackUse.Out, Side.Left, Millimetres.From(Size.Depth.Value * 6 / 10)),
        new(JackUse.Power, Side.Rear, Millimetres.From(Size.Width.Value / 2)),
    ];

    /// <summary>In a row near the front.</summary>
    public ValueList<Point> Switches =>
        Enumerable.Range(0, SwitchCount)
            .Select(i => new Point(Millimetres.From(Size.Width.Value * (2 * i + 1) / (2 * SwitchCount)), 25.Mm))
            .ToValueList();
}
