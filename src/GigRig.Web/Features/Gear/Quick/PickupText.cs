namespace GigRig.Web.Features.Gear.Quick;

/// <summary>What drives the lead of an instrument, in a word: <c>single coil</c>, <c>humbucker</c>, <c>passive</c>, or <c>active</c>, <c>preamp</c>.</summary>
public static class PickupText
{
    // Magnetic pickups of either build are one to the wiring: nothing but coil and cable.
    private static readonly string[] Passive = ["passive", "magnetic", "single coil", "single coils", "single-coil", "single-coils", "humbucker", "humbuckers", "humbucking"];
    private static readonly string[] Active = ["active", "preamp"];

    /// <summary>Whether a preamp drives the lead. Null where nothing was typed, or nothing that is known; then <paramref name="complain"/> hears of it.</summary>
    public static bool? Read(string text, Action<string> complain)
    {
        if (Passive.Contains(text, StringComparer.OrdinalIgnoreCase))
            return false;
        if (Active.Contains(text, StringComparer.OrdinalIgnoreCase))
            return true;
        if (text.Length > 0)
            complain($"\"{text}\" is no pickup that is known here. Type passive, single coil or humbucker where nothing but the pickup drives the lead, active where a preamp does; leave it empty where you do not know.");
        return null;
    }
}
