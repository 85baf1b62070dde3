namespace GigRig.Domain.Geometry;

/// <summary>A side of an unturned body, as the player stands at it. A top jack lets its plug stand upward and reserves nothing beside the body.</summary>
public enum Side
{
    Left,
    Right,
    Rear,
    Front,
    Top,
}
