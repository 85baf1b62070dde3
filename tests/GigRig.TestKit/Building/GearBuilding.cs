using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Units;

namespace GigRig.TestKit.Building;

public static class GearBuilding
{
    public static Board Weighing(this Board board, int grams) => board with { Mass = grams.G };

    /// <summary>Adds a rail.</summary>
    public static Board Railed(this Board board, int from, int to) => board with { Rails = [.. board.Rails, new(from.Mm, to.Mm)] };

    /// <summary>Adds a keep-out.</summary>
    public static Board KeepingOut(this Board board, int x, int y, int width, int depth) =>
        board with { KeepOuts = [.. board.KeepOuts, new Rect(x.Mm, y.Mm, width.Mm, depth.Mm)] };

    public static Board Overhanging(this Board board, int front, int rear, int left, int right) =>
        board with { Overhang = new(front.Mm, rear.Mm, left.Mm, right.Mm) };

    public static Board Bearing(this Board board, int maxGrams) => board with { MaxLoad = maxGrams.G };

    public static Board Clearing(this Board board, int? under = null, int? over = null) =>
        board with { ClearanceUnder = under?.Mm, ClearanceOver = over?.Mm };

    public static Outlet Giving(this Outlet outlet, int milliamps) => outlet with { Current = milliamps.MilliA };

    public static Outlet AtVolts(this Outlet outlet, params int[] volts) => outlet with { Volts = [.. volts.Select(v => v.V)] };

    public static Outlet Sharing(this Outlet outlet, string group) => outlet with { Group = group };

    public static Outlet Positive(this Outlet outlet) => outlet with { Polarity = Polarity.Positive };

    public static Outlet Alternating(this Outlet outlet) => outlet with { Type = CurrentType.Ac };

    public static Supply Weighing(this Supply supply, int grams) => supply with { Mass = grams.G };

    public static Supply Totalling(this Supply supply, int milliamps) => supply with { TotalCurrent = milliamps.MilliA };

    public static Supply Mounted(this Supply supply, SupplyMount mount, int width, int depth, int height) =>
        supply with { Mount = mount, Size = new(width.Mm, depth.Mm, height.Mm) };

    public static Amp Looped(this Amp amp, AmpLoop loop = AmpLoop.Series) => amp with { Loop = loop };

    /// <summary>Adds channels, which exclude each other.</summary>
    public static Amp WithChannels(this Amp amp, params string[] roles) =>
        amp with { Functions = [.. amp.Functions, .. roles.Select(role => new RoleFunction(new(role), Section: "channel"))] };

    public static OffBoardItem Doing(this OffBoardItem item, params string[] roles) =>
        item with { Functions = [.. item.Functions, .. roles.Select(role => new RoleFunction(new(role)))] };
}
