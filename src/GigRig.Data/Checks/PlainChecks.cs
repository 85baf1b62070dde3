using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;

namespace GigRig.Data.Checks;

/// <summary>Checks of single values that no planning problem holds.</summary>
internal static class PlainChecks
{
    public const int LongestName = 200;
    public const int LongestNote = 4000;

    /// <summary>1–200 characters, none of them a control character.</summary>
    public static IEnumerable<Complaint> Name(string path, string what, string? name)
    {
        if (string.IsNullOrWhiteSpace(name))
            yield return new(path, "nothing", $"1 to {LongestName} characters", $"The {what} is empty; give 1 to {LongestName} characters.");
        else if (name.Length > LongestName)
            yield return Length(path, what, name, $"1 to {LongestName} characters");
        else if (name.Any(char.IsControl))
            yield return new(path, Printable(name), "no control characters", $"The {what} \"{Printable(name)}\" holds a control character; take it out.");
    }

    /// <summary>At most 4000 characters; line breaks are fine.</summary>
    public static IEnumerable<Complaint> Note(string path, string? note)
    {
        if (note is null || note.Length > LongestNote)
            yield return Length(path, "note", note, $"at most {LongestNote} characters");
        else if (note.Any(c => char.IsControl(c) && c is not ('\n' or '\r' or '\t')))
            yield return new(path, Printable(note), "no control characters but line breaks and tabs", "The note holds a control character; take it out.");
    }

    public static IEnumerable<Complaint> RoleKey(string path, string key)
    {
        if (!Role.IsWellFormed(key))
        {
            yield return new(
                path,
                Printable(key),
                $"1 to {Role.MaxLength} of a-z, 0-9, - and dots between parts",
                $"The key \"{Printable(key)}\" is not well formed; use lower-case letters, digits, - and dots between parts, at most {Role.MaxLength}.");
        }
    }

    public static IEnumerable<Complaint> Within(string path, string what, int value, int least, int most, string unit = "")
    {
        if (value < least || value > most)
            yield return new(path, $"{value}", $"{least} to {most}{unit}", $"The {what} is {value}{unit}; give {least} to {most}{unit}.");
    }

    public static IEnumerable<Complaint> Word<T>(string path, string what, T word)
        where T : struct, Enum
    {
        if (!Enum.IsDefined(word))
            yield return new(path, $"{word}", string.Join(", ", Enum.GetNames<T>()), $"The {what} {word} is unknown; give one of: {string.Join(", ", Enum.GetNames<T>())}.");
    }

    private static Complaint Length(string path, string what, string? text, string limit) =>
        new(path, $"{text?.Length ?? 0} characters", limit, $"The {what} has {text?.Length ?? 0} characters; give {limit}.");

    private static string Printable(string text) => new([.. text.Take(40).Select(c => char.IsControl(c) ? '�' : c)]);
}
