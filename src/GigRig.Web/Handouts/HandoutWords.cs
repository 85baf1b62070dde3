using GigRig.Data;

namespace GigRig.Web.Handouts;

/// <summary>A shared rig in one sentence, for a chat preview.</summary>
internal static class HandoutWords
{
    private const int MostNames = 8;

    public static string Of(SharedRig shared)
    {
        var names = shared.Problem.Devices.Where(device => shared.Rig.Holds(device.Id)).Select(device => device.Name).ToList();
        var listed = string.Join(", ", names.Take(MostNames)) + (names.Count > MostNames ? $" and {names.Count - MostNames} more" : "");
        return $"{shared.Problem.Event.Name} on {shared.Problem.Board.Name}{(names.Count > 0 ? ": " + listed : "")}.";
    }
}
