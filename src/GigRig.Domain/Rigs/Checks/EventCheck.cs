using GigRig.Domain.Events;

namespace GigRig.Domain.Rigs.Checks;

internal static class EventCheck
{
    public static void Run(EventType night, Spot spot)
    {
        spot.Text("name", night.Name, Bounds.LongestName);
        CheckNeeds(night.Needs, spot);
        spot.Count("sounds", night.Sounds.Count, Bounds.MostSounds);
        var names = new HashSet<string?>(StringComparer.Ordinal);
        foreach (var (index, sound) in night.Sounds.Index())
            SoundCheck.Run(sound, names, spot.Item("sounds", index, string.IsNullOrWhiteSpace(sound.Name) ? $"sound {index + 1}" : $"sound {Spot.Shown(sound.Name)}"));
        CheckLimits(night.Limits, spot.Member("limits", "the limits"));
        spot.Word("chain", night.Chain);
        MainsCheck.Run(night.Venue, spot.Member("venue", "the venue"));
    }

    private static void CheckNeeds(ValueList<Need> needs, Spot spot)
    {
        spot.Count("needs", needs.Count, Bounds.MostNeeds);
        var seen = new HashSet<string?>(StringComparer.Ordinal);
        foreach (var (index, need) in needs.Index())
        {
            var place = spot.Item("needs", index, $"need {index + 1}");
            FunctionsCheck.CheckRole(need.Role, "role", place);
            place.Word("level", need.Level);
            place.Whole("weight", need.Weight, 1, Need.MaxWeight);
            if (!seen.Add(need.Role.Key))
                place.Say("role", Spot.Shown(need.Role.Key), "once", $"{Spot.Shown(need.Role.Key)} is needed twice; keep one.");
        }
    }

    private static void CheckLimits(EventLimits limits, Spot spot)
    {
        if (limits.Mass is { } mass)
            spot.Mass("mass", mass, Bounds.MostCarried, "The limit on mass");
        if (limits.Devices is { } devices)
            spot.Whole("devices", devices, 0, Bounds.MostDevices, what: "The limit on devices");
        if (limits.FreeArea is { } free)
            spot.Whole("freeArea", free, 0, Bounds.MostFreeArea, " %", "The free area");
    }
}
