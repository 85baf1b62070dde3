using GigRig.Domain.Geometry;

namespace GigRig.Domain.Rigs.Checks;

internal static class SizeCheck
{
    public static void Run(BodySize size, Spot spot)
    {
        spot.Length("width", size.Width, Bounds.LeastSize, Bounds.MostSize);
        spot.Length("depth", size.Depth, Bounds.LeastSize, Bounds.MostSize);
        spot.Length("height", size.Height, Bounds.LeastSize, Bounds.MostSize);
    }
}
