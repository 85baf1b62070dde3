using GigRig.Web.Drawing;

namespace GigRig.Web.Features.Workbench;

/// <summary>Where bodies and plugs of different things lie over each other, for marking; the rule book says by how much.</summary>
internal static class Clashes
{
    public static IEnumerable<SceneArea> In(BoardScene scene)
    {
        for (var i = 0; i < scene.Bodies.Count; i++)
            for (var j = i + 1; j < scene.Bodies.Count; j++)
                foreach (var one in Parts(scene.Bodies[i]))
                    foreach (var other in Parts(scene.Bodies[j]))
                        if (Shared(one, other) is { Width: > 0, Height: > 0 } shared)
                            yield return shared;
    }

    private static IEnumerable<SceneArea> Parts(SceneBody body) => body.Plugs.Select(plug => plug.Area).Prepend(body.Area);

    private static SceneArea Shared(SceneArea a, SceneArea b)
    {
        var (x, y) = (Math.Max(a.X, b.X), Math.Max(a.Y, b.Y));
        return new(x, y, Math.Min(a.Right, b.Right) - x, Math.Min(a.Bottom, b.Bottom) - y);
    }
}
