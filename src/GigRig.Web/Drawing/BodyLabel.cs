using GigRig.Domain;

namespace GigRig.Web.Drawing;

/// <summary>The words on a body, cut to what it can hold; the legend has them in full.</summary>
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
    public const double LetterWidth = 0.6;
    public const double LineHeight = 1.12;

    /// <summary>The number and the sign take the first line and a bit.</summary>
    public const double HeadHeight = 1.45;

    private const double Padding = 0.25;
    private const int NameLines = 2;

    public static BodyLabel Fit(double width, double height, double textSize, string name, string role, string? outlet)
    {
        var across = Write(width, height - (HeadHeight * textSize), textSize, name, role, outlet, sideways: false);
        if (!across.Shortened || height <= width)
            return across;
        var along = Write(height - (HeadHeight * textSize), width, textSize, name, role, outlet, sideways: true);
        return Letters(along) > Letters(across) ? along : across;
    }

    private static BodyLabel Write(double width, double height, double textSize, string name, string role, string? outlet, bool sideways)
    {
        var letters = (int)((width - (2 * Padding * textSize)) / (LetterWidth * textSize));
        var room = (int)((height - (Padding * textSize)) / (LineHeight * textSize));
        if (letters < 2 || room < 1)
            return new([], sideways, Shortened: true);

        // One line each is kept for the outlet and the role, in that order, before the name may run on to a second one.
        var outletLines = outlet is { Length: > 0 } && room > 1 ? 1 : 0;
        var roleLines = role.Length > 0 && room - outletLines > 1 ? 1 : 0;
        var nameRoom = Math.Min(NameLines, room - outletLines - roleLines);

        var lines = Wrap(name, letters, nameRoom).Select(text => new LabelLine(LabelKind.Name, text)).ToList();
        var nameCut = string.Join(' ', lines.Select(line => line.Text)) != name;
        if (roleLines > 0)
            lines.Add(new(LabelKind.Role, Cut(role, letters)));
        if (outletLines > 0)
            lines.Add(new(LabelKind.Outlet, Cut(outlet!, letters)));

        var shortened = nameCut
            || role.Length > (roleLines > 0 ? letters : 0)
            || (outlet?.Length ?? 0) > (outletLines > 0 ? letters : 0);
        return new(lines.ToValueList(), sideways, shortened);
    }

    private static IEnumerable<string> Wrap(string text, int letters, int lines)
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

    private static int Letters(BodyLabel label) => label.Lines.Sum(line => line.Text.TrimEnd('…').Length);
}
