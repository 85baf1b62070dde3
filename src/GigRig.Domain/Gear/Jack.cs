using GigRig.Domain.Geometry;
using GigRig.Domain.Units;

namespace GigRig.Domain.Gear;

/// <summary>What goes through a jack.</summary>
public enum JackUse
{
    In,
    Out,
    Send,
    Return,
    Power,
    Control,
}

/// <summary>A jack of an unturned body.</summary>
/// <param name="At">Centre of the jack from the side's left end; for the left and right sides, from the front.</param>
public sealed record Jack(JackUse Use, Side Side, Millimetres At);

/// <summary>Whether a switched-off device is bare wire or keeps driving the line.</summary>
public enum Bypass
{
    True,
    Buffered,
}
