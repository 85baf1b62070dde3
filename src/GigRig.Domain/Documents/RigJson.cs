using System.Text.Json;
using GigRig.Domain.Documents.Reading;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rigs.Checks;

namespace GigRig.Domain.Documents;

/// <summary>Reads and writes <c>rig/1</c>.</summary>
public static class RigJson
{
    /// <summary>Millimetres from the origin, either way. Far off any board, and near enough to reckon with.</summary>
    public const int FarthestPlace = 100_000;

    /// <summary>Characters of a note on silenced advice.</summary>
    public const int LongestNote = 1000;

    /// <summary>Every complaint about the text at once. Never throws on what the text says.</summary>
    public static RigCheck Read(string json)
    {
        var (document, list) = DocumentReader.Read<RigDocument>(options => JsonDocument.Parse(json, options), RigDocument.FormatWord);
        if (document is not null)
            CheckPlaces(document, list);
        foreach (var (index, silenced) in (document?.Silenced ?? []).Index())
            if (silenced.Note.Length > LongestNote)
                list.Add($"/silenced/{index}/note", $"{silenced.Note.Length} characters", $"at most {LongestNote} characters", $"The note on {silenced.Advice} has {silenced.Note.Length} characters; give at most {LongestNote}.");
        return document is null || !list.Clean ? new RigCheck.Refused(list.Complaints) : new RigCheck.Accepted(document.ToRig());
    }

    /// <summary>Reads back as an equal rig.</summary>
    public static string Write(Rig rig) => JsonSerializer.Serialize(RigDocument.Of(rig), DocumentJson.Indented);

    private static void CheckPlaces(RigDocument document, CheckList list)
    {
        foreach (var (index, placement) in document.Placements.Index())
            CheckPlace(placement, $"/placements/{index}", list);
        if (document.Supply is { } supply)
            CheckPlace(supply, "/supply", list);
    }

    private static void CheckPlace(PlacementDocument placement, string pointer, CheckList list)
    {
        foreach (var (name, value) in new[] { ("x", placement.X), ("y", placement.Y) })
            if (value is < -FarthestPlace or > FarthestPlace)
                list.Add(
                    pointer.Member(name),
                    $"{value}",
                    $"{-FarthestPlace} to {FarthestPlace} mm",
                    $"{placement.Id} stands at {name} = {value} mm; give {-FarthestPlace} to {FarthestPlace} mm.");
        if (!Enum.IsDefined((Geometry.Turn)placement.Turn))
            list.Add(pointer.Member("turn"), $"{placement.Turn}", "0, 90, 180 or 270", $"{placement.Id} is turned by {placement.Turn}°; give 0, 90, 180 or 270.");
    }
}
