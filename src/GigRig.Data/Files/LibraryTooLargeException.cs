using System.Text;

namespace GigRig.Data.Files;

/// <summary>The library does not go into one file that could be read in again. A file that looks like a copy and is none is worse than no file.</summary>
public sealed class LibraryTooLargeException : Exception
{
    private LibraryTooLargeException(string what, string most)
        : base($"The library has {what}, and a library file that can be read in again has at most {most}. Keep a copy of the whole data folder instead, with the app stopped.")
    {
    }

    internal static void Require(LibraryContent content)
    {
        (string Kind, int Count)[] kinds =
        [
            ("devices", content.Devices.Count), ("boards", content.Boards.Count), ("supplies", content.Supplies.Count), ("amps", content.Amps.Count),
            ("off-board items", content.OffBoard.Count), ("leads", content.Leads.Count), ("instruments", content.Instruments.Count),
            ("roles of your own", content.Roles.Count), ("event types", content.Events.Count), ("rigs", content.Rigs.Count),
        ];
        if (kinds.FirstOrDefault(kind => kind.Count > LibraryReading.MostOfAKind) is { Kind: not null } many)
            throw new LibraryTooLargeException($"{many.Count} {many.Kind}", $"{LibraryReading.MostOfAKind} of a kind");
    }

    internal static void Require(string text)
    {
        if (Encoding.UTF8.GetByteCount(text) is var bytes && bytes > LibraryFile.MaxBytes)
            throw new LibraryTooLargeException($"{bytes / 1_000_000 + 1} MB as a file", $"{LibraryFile.MaxBytes / 1_000_000} MB");
    }
}
