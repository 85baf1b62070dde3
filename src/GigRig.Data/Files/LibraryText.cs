using System.Text.Json;
using GigRig.Domain.Documents;

namespace GigRig.Data.Files;

/// <summary>Between the content of a library and its text.</summary>
internal static class LibraryText
{
    public static string Write(LibraryContent content) => JsonSerializer.Serialize(LibraryWriting.Of(content), DocumentJson.Indented) + "\n";

    /// <summary>The content; null where there is anything to complain of.</summary>
    public static LibraryContent? Read(ReadOnlyMemory<byte> text, ComplaintList complaints)
    {
        var (document, shape) = StrictDocument.Read<LibraryDocument>(text, LibraryDocument.FormatWord);
        foreach (var complaint in shape)
            complaints.Add(complaint);
        var content = document is null ? null : LibraryReading.Read(document, complaints);
        return complaints.All.Count == 0 ? content : null;
    }
}
