using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Units;

namespace GigRig.Data.Rows;

/// <summary>One jack inside a device's JSON column.</summary>
internal sealed class JackRow
{
    public JackUse Use { get; set; }

    public Side Side { get; set; }

    public int At { get; set; }

    public static JackRow From(Jack jack) => new() { Use = jack.Use, Side = jack.Side, At = jack.At.Value };

    public Jack ToJack() => new(Use, Side, At.Mm);
}

/// <summary>One foot switch inside a device's JSON column.</summary>
internal sealed class SwitchRow
{
    public int X { get; set; }

    public int Y { get; set; }

    public static SwitchRow From(Point point) => new() { X = point.X.Value, Y = point.Y.Value };

    public Point ToPoint() => new(X.Mm, Y.Mm);
}
