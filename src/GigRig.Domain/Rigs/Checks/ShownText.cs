using System.Text;

namespace GigRig.Domain.Rigs.Checks;

/// <summary>Given text as it is quoted in a complaint.</summary>
internal static class ShownText
{
    /// <summary>Cut to a length, never through the middle of a character.</summary>
    public static string Shortened(this string text, int longest)
    {
        if (text.Length <= longest)
            return text;
        return (char.IsHighSurrogate(text[longest - 1]) ? text[..(longest - 1)] : text[..longest]) + "…";
    }

    /// <summary>Whether it holds half of a surrogate pair, or the sign that stands for a character lost on the way.</summary>
    public static bool HasLostCharacters(this string text) => text.EnumerateRunes().Any(rune => rune == Rune.ReplacementChar);
}
