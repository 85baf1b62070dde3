using GigRig.Domain.Geometry;
using GigRig.Domain.Units;

namespace GigRig.Domain.Rules.Standing;

/// <summary>Which edges of an area a rectangle passes, and by how much.</summary>
internal static class Edges
{
    public static IEnumerable<(string Name, Millimetres By)> Beyond(Rect rect, Rect area)
    {
        (string Name, Millimetres By)[] edges =
        [
            ("front", area.Y - rect.Y),
            ("rear", rect.Rear - area.Rear),
            ("left", area.X - rect.X),
            ("right", rect.Right - area.Right),
        ];
        return edges.Where(edge => edge.By > Millimetres.Zero);
    }
}
