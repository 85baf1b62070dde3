using GigRig.Domain.Geometry;
using GigRig.Domain.Units;

namespace GigRig.Domain.Rules.Standing;

/// <summary>The deepest overlap between a part of one thing and a part of another.</summary>
/// <param name="By">How far one must move, along or across, to be clear of the other at this spot.</param>
internal sealed record Clash(bool FirstIsPlug, bool SecondIsPlug, Millimetres By)
{
    public static Clash? Between(StandingThing first, StandingThing second) =>
        (from a in first.Parts.Index()
         from b in second.Parts.Index()
         where a.Item.Overlaps(b.Item)
         select new Clash(a.Index > 0, b.Index > 0, Depth(a.Item, b.Item))).MaxBy(clash => clash.By);

    /// <summary>As it begins a sentence: <c>A plug of Echo and the body of Hall</c>.</summary>
    public string Of(string first, string second) =>
        $"{(FirstIsPlug ? "A plug" : "The body")} of {first} and {(SecondIsPlug ? "a plug" : "the body")} of {second}";

    public static Millimetres Depth(Rect a, Rect b)
    {
        var (width, depth) = a.Overlap(b);
        return width < depth ? width : depth;
    }
}
