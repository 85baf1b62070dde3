using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;

namespace GigRig.Domain.Units;

/// <summary>
/// Words whose lengths and areas are told in the unit of whoever reads them. Write one as an interpolated string where one is asked for; the compiler
/// calls the rest. Two are equal when they say the same.
/// </summary>
[InterpolatedStringHandler]
public sealed class Phrase : IEquatable<Phrase>
{
    private readonly StringBuilder millimetres;
    private readonly StringBuilder inches;

    public Phrase(int literalLength, int formattedCount) => (millimetres, inches) = (new(literalLength), new(literalLength));

    public static implicit operator Phrase(string text)
    {
        var phrase = new Phrase(text.Length, 0);
        phrase.AppendLiteral(text);
        return phrase;
    }

    public static bool operator ==(Phrase? left, Phrase? right) => Equals(left, right);

    public static bool operator !=(Phrase? left, Phrase? right) => !Equals(left, right);

    public string In(LengthUnit unit) => (unit == LengthUnit.Inches ? inches : millimetres).ToString();

    /// <summary>In millimetres, as in documents.</summary>
    public override string ToString() => millimetres.ToString();

    public bool Equals(Phrase? other) => other is not null && millimetres.Equals(other.millimetres);

    public override bool Equals(object? obj) => Equals(obj as Phrase);

    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(ToString());

    public void AppendLiteral(string text)
    {
        millimetres.Append(text);
        inches.Append(text);
    }

    public void AppendFormatted<T>(T value) => AppendLiteral(Convert.ToString(value, CultureInfo.InvariantCulture) ?? "");

    public void AppendFormatted(Millimetres length) => AppendFormatted(length, "");

    /// <param name="format"><c>bare</c> leaves the unit to the length behind it, as in <c>{width:bare} × {depth}</c>.</param>
    public void AppendFormatted(Millimetres length, string format) => Append(unit => LengthText.Format(length, unit), format);

    public void AppendFormatted(Millimetres? length)
    {
        if (length is { } known)
            AppendFormatted(known);
    }

    public void AppendFormatted(SquareMillimetres area) => AppendFormatted(area, "");

    /// <inheritdoc cref="AppendFormatted(Millimetres, string)"/>
    public void AppendFormatted(SquareMillimetres area, string format) => Append(unit => LengthText.Format(area, unit), format);

    public void AppendFormatted(Phrase phrase) => Append(phrase.In, "");

    private void Append(Func<LengthUnit, string> told, string format)
    {
        millimetres.Append(Told(LengthUnit.Millimetres));
        inches.Append(Told(LengthUnit.Inches));

        string Told(LengthUnit unit) => format == "bare" ? told(unit).Split(' ')[0] : told(unit);
    }
}
