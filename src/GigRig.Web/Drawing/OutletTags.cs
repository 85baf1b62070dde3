namespace GigRig.Web.Drawing;

/// <summary>Says at each power plug which outlets its lead comes from.</summary>
internal static class OutletTags
{
    public static IEnumerable<SceneTag> Of(IEnumerable<PlacedBody> bodies) =>
        from body in bodies
        where body.HookUp is { Volts.Length: > 0 }
        let plug = body.Plugs.FirstOrDefault(plug => plug.Kind == PlugKind.Power)
        where plug is not null
        select new SceneTag(body.HookUp!.Tag.Split(':')[0], plug.Area.Centre);
}
