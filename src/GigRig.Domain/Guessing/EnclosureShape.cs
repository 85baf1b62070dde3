using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Units;

namespace GigRig.Domain.Guessing;

/// <summary>A usual size of a floor device's box, to start from.</summary>
/// <param name="Word">What players call it; one of <see cref="All"/>.</param>
/// <param name="WordWidth">The widest box that goes by this word; null where no figure is known.</param>
/// <param name="WordDepth">The deepest one.</param>
/// <remarks>
/// Small die-cast, compact, wide, large, double and multi-switch follow footprints published in makers' lists of enclosure sizes; mini, lying and rocker are
/// common practice, no source. Heights and jack places are rules of thumb: measure your own.
/// </remarks>
public sealed record EnclosureShape(string Word, BodySize Size, Grams Mass, int SwitchCount = 1, Millimetres? WordWidth = null, Millimetres? WordDepth = null)
{
    public static IReadOnlyList<EnclosureShape> All { get; } =
    [
        new("Mini", new(43.Mm, 93.Mm, 45.Mm), 200.G, 1, 45.Mm, 95.Mm),
        new("Small", new(60.Mm, 112.Mm, 50.Mm), 300.G),
        new("Compact", new(70.Mm, 122.Mm, 55.Mm), 400.G, 1, 73.Mm, 129.Mm),
        new("Wide", new(84.Mm, 130.Mm, 55.Mm), 450.G),
        new("Lying", new(120.Mm, 95.Mm, 55.Mm), 450.G, 2),
        new("Large", new(140.Mm, 173.Mm, 60.Mm), 800.G, 2),
        new("Double", new(173.Mm, 159.Mm, 60.Mm), 1000.G, 2),
        new("Rocker", new(100.Mm, 250.Mm, 80.Mm), 1200.G, 0, 105.Mm, 260.Mm),
        new("Many switches", new(254.Mm, 152.Mm, 60.Mm), 1300.G, 4),
    ];

    /// <summary>The one most boxes have.</summary>
    public static EnclosureShape Usual { get; } = All.First(shape => shape.Word == "Compact");

    /// <summary>Null where no shape goes by this word.</summary>
    public static EnclosureShape? Find(string? word) =>
        All.FirstOrDefault(shape => shape.Word.Equals(word?.Trim(), StringComparison.OrdinalIgnoreCase));

    /// <summary>The one whose footprint is nearest in area.</summary>
    public static EnclosureShape NearestTo(Millimetres width, Millimetres depth)
    {
        var area = (long)width.Value * depth.Value;
        return All.MinBy(shape => Math.Abs((long)shape.Size.Width.Value * shape.Size.Depth.Value - area))!;
    }

    /// <summary>Input right, output left, as the signal usually runs; power in the middle of the rear.</summary>
    public ValueList<Jack> Jacks => JacksOf(Size.Width, Size.Depth);

    /// <summary>In a row near the front.</summary>
    public ValueList<Point> Switches => SwitchesOf(Size.Width, Size.Depth, SwitchCount);

    internal static ValueList<Jack> JacksOf(Millimetres width, Millimetres depth) =>
    [
        new(JackUse.In, Side.Right, (depth.Value * 6 / 10).Mm),
        new(JackUse.Out, Side.Left, (depth.Value * 6 / 10).Mm),
        new(JackUse.Power, Side.Rear, (width.Value / 2).Mm),
    ];

    internal static ValueList<Point> SwitchesOf(Millimetres width, Millimetres depth, int count) =>
        Enumerable.Range(0, count)
            .Select(i => new Point((width.Value * (2 * i + 1) / (2 * count)).Mm, Math.Min(25, depth.Value / 2).Mm))
            .ToValueList();
}
