namespace GigRig.Web.Shared.Help;

/// <summary>One thing that keys do.</summary>
/// <param name="Keys">As they are pressed, one after the other, blanks between.</param>
/// <param name="Url">Where they lead; null for what a page does itself.</param>
public sealed record Shortcut(string Keys, string Does, string? Url = null);

/// <summary>All keys of the app, as the list of them shows them and as <c>js/shortcuts.js</c> reads them from it.</summary>
public static class ShortcutList
{
    public static IReadOnlyList<Shortcut> Everywhere { get; } =
    [
        new("g p", "Plan a rig", GigRigUrls.Plan),
        new("g r", "Rigs", GigRigUrls.Rigs),
        new("g g", "Gear", GigRigUrls.Gear),
        new("g e", "Event types", GigRigUrls.Events),
        new("g l", "Library file", GigRigUrls.Library),
        new("g w", "The words", GigRigUrls.Glossary),
        new("g h", "Start page", GigRigUrls.Home),
    ];
}
