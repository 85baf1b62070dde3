using GigRig.Domain.Geometry;
using GigRig.Domain.Units;

namespace GigRig.Data.Rows;

/// <summary>Three columns in whole millimetres.</summary>
internal sealed class SizeRow
{
    public int Width { get; set; }

    public int Depth { get; set; }

    public int Height { get; set; }

    public static SizeRow From(BodySize size) => new() { Width = size.Width.Value, Depth = size.Depth.Value, Height = size.Height.Value };

    public BodySize ToSize() => new(Width.Mm, Depth.Mm, Height.Mm);
}
