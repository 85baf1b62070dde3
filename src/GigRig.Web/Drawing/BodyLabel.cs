using GigRig.Domain;

namespace GigRig.Web.Drawing;

/// <summary>The words on a body, cut to what it can hold, the name first; the legend has them in full.</summary>
/// <param name="Lines">Top to bottom as read: name, then role, then outlet.</param>
/// <param name="Sideways">Read from the front edge to the rear, for bodies too narrow to write across.</param>
/// <param name="Shortened">Whether anything was cut or left out.</param>
public sealed record BodyLabel(ValueList<LabelLine> Lines, bool Sideways, bool Shortened);

/// <summary>What a line of a label tells.</summary>
public enum LabelKind
{
    Name,
    Role,
    Outlet,
}

/// <summary>One line of a label.</summary>
public sealed record LabelLine(LabelKind Kind, string Text);

/// <summary>Fits words into a body without measuring any font: a generous guess of the width of a letter keeps them inside whatever font the reader has.</summary>
internal static class LabelFitter
{
    /// <summary>Width of a letter and height of a line, as parts of the text size.</summary>
    public const double LetterWidth = 0.64;
    public const double LineHeight = 1.12;

    /// <summary>The number and the sign take the first line and a bit.</summary>
    public const double HeadHeight = 1.7;

    private const double Padding = 0.25;

    public static BodyLabel Fit(double width, double height, double textSize, string name, string role, string? outlet)
    {
        var across = Write(width, height - (HeadHeight * textSize), textSize, name, role, outlet, sideways: false);
        if (!across.Shortened || height <= width)
            return across;
        var along = Write(height - (HeadHeight * textSize), width, textSize, name, role, outlet, sideways: true);
        return NameLetters(along) > NameLetters(across) ? along : across;
    }

    private static BodyLabel Write(double width, double height, double textSize, string name, string role, string? outlet, bool sideways)
    {
        var letters = (int)((width - (2 * Padding * textSize)) / (LetterWidth * textSize));
        var room = (int)((height - (Padding * textSize)) / (LineHeight * textSize));
        if (letters < 2 || room < 1)
            return new([], sideways, Shortened: true);

        // The last line is kept for the outlet.
        var (lines, shortened) = (new List<LabelLine>(), false);
        Add(LabelKind.Name, name, most: 2);
        Add(LabelKind.Role, role, most: Math.Min(2, room - lines.Count - (outlet is null ? 0 : 1)));
        Add(LabelKind.Outlet, outlet ?? "", most: 1);
        return new(lines.ToValueList(), sideways, shortened);

        void Add(LabelKind kind, string words, int most)
        {
            var texts = Wrap(words, letters, Math.Min(most, room - lines.Count)).ToList();
            shortened |= string.Join(' ', texts) != words;
            lines.AddRange(texts.Select(text => new LabelLine(kind, text)));
        }
    }

    /// <summary>At most so many lines of at most so many letters; what is too much is cut.</summary>
    public static IEnumerable<string> Wrap(string text, int letters, int lines)
    {
        var rest = text;
        for (var line = 1; rest.Length > 0 && line <= lines; line++)
        {
            var gap = rest.LastIndexOf(' ', Math.Min(letters, rest.Length - 1));
            var last = line == lines || rest.Length <= letters || gap <= 0;
            yield return last ? Cut(rest, letters) : rest[..gap];
            rest = last ? "" : rest[(gap + 1)..];
        }
    }

    private static string Cut(string text, int letters)
    {
        if (text.Length <= letters)
            return text;
        var end = letters - 1;
        // Half a surrogate pair is no letter.
        if (char.IsHighSurrogate(text[end - 1]))
            end--;
        return text[..end].TrimEnd() + "…";
    }

    private static int NameLetters(BodyLabel label) =>
        label.Lines.Where(line => line.Kind == LabelKind.Name).Sum(line => line.Text.Replace("…", "").Replace(" ", "").Length);
}
