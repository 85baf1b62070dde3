using GigRig.Domain.Events;

namespace GigRig.Domain.Rigs.Checks;

internal static class SoundCheck
{
    /// <param name="names">Of the sounds before this one; its own is added.</param>
    public static void Run(Sound sound, HashSet<string?> names, Spot spot)
    {
        spot.Text("name", sound.Name, Bounds.LongestName);
        if (!names.Add(sound.Name))
            spot.Say("name", Spot.Shown(sound.Name), "once", $"{Spot.Capital(spot.Thing)} is there twice; give each sound a name of its own.");
        spot.Word("level", sound.Level);
        spot.Whole("weight", sound.Weight, 1, Need.MaxWeight);
        CheckRoles(sound, spot);
    }

    private static void CheckRoles(Sound sound, Spot spot)
    {
        if (sound.Roles.Count == 0)
            spot.Say("roles", "nothing", $"1 to {Sound.MaxRoles}", $"{Spot.Capital(spot.Thing)} has no roles; give 1 to {Sound.MaxRoles}.");
        spot.Count("roles", sound.Roles.Count, Sound.MaxRoles);
        var seen = new HashSet<string?>(StringComparer.Ordinal);
        foreach (var (index, role) in sound.Roles.Index())
        {
            var place = spot.Member("roles", spot.Thing);
            FunctionsCheck.CheckRole(role, $"{index}", place);
            if (!seen.Add(role.Key))
                place.Say($"{index}", Spot.Shown(role.Key), "once", $"{Spot.Capital(spot.Thing)} asks for {Spot.Shown(role.Key)} twice; keep one.");
        }
    }
}
