namespace GigRig.Planning.Choosing;

/// <summary>How a body is to stand, or in which ways it may.</summary>
[Flags]
internal enum Posture
{
    AtHome = 0,

    /// <summary>In its deepest way, which is deeper than half the board, so that nothing else of the kind can stand behind it.</summary>
    InRow = 1,

    /// <summary>In another way, mostly a turned one, which may leave room behind it.</summary>
    Otherwise = 2,

    Any = InRow | Otherwise,
}
