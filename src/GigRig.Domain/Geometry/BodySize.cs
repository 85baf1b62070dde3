using GigRig.Domain.Units;

namespace GigRig.Domain.Geometry;

/// <summary>The unturned outside measures of a thing that stands on or under a board, without its plugs. Each 1–3000 mm.</summary>
public readonly record struct BodySize(Millimetres Width, Millimetres Depth, Millimetres Height)
{
    /// <summary>Width and depth as seen after turning; height stays.</summary>
    public BodySize Turned(Turn turn) => turn is Turn.Quarter or Turn.ThreeQuarter ? new(Depth, Width, Height) : this;
}
