namespace GigRig.Planning.Choosing;

/// <summary>
/// How a body is to stand: in any way; in its deepest way, which is deeper than half the board, so that nothing else of the kind can stand behind it; or in another
/// way, mostly a turned one, which may leave room behind it.
/// </summary>
internal enum Posture
{
    Any,
    InRow,
    Otherwise,
}
