using GigRig.Domain.Units;

namespace GigRig.Domain.Geometry;

/// <summary>A place on the board. Origin: its front-left corner as the player stands at it; X runs right, Y runs away from the player.</summary>
public readonly record struct Point(Millimetres X, Millimetres Y);
