namespace GigRig.Domain.Geometry;

/// <summary>How far a thing is turned clockwise, seen from above, from the way it is described. The value is in degrees.</summary>
public enum Turn
{
    None = 0,
    Quarter = 90,
    Half = 180,
    ThreeQuarter = 270,
}
