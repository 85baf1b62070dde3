using System.Globalization;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;

namespace GigRig.Web.Shared.Forms;

/// <summary>
/// Turns what was typed into values and notes what could not be read. An unreadable entry gives a stand-in value; whoever uses the reader asks
/// <see cref="Errors"/> before trusting any of them.
/// </summary>
public sealed class EntryReader(LengthUnit unit)
{
    private readonly List<FieldError> errors = [];

    public IReadOnlyList<FieldError> Errors => errors;

    /// <summary>
    /// Whether the domain can be asked already. Lengths and voltages are judged by one another: with a stand-in among them it would find faults that
    /// are none.
    /// </summary>
    public bool CanBeJudged { get; private set; } = true;

    public string Name(string field, string label, string? text)
    {
        var trimmed = (text ?? "").Trim();
        if (trimmed.Length == 0)
            Add(field, $"{label} is empty. Type one.");
        return trimmed.Length > 0 ? trimmed : "?";
    }

    public Millimetres Length(string field, string label, string? text)
    {
        if (string.IsNullOrWhiteSpace(text))
            Add(field, $"{label} is empty. Type a length such as 140 mm or 5 1/2\".");
        else if (LengthText.TryParse(text, unit, out var length, out var error))
            return length;
        else
            Add(field, $"{label}: {error}");
        CanBeJudged = false;
        return 1.Mm;
    }

    public Millimetres? OptionalLength(string field, string label, string? text) =>
        string.IsNullOrWhiteSpace(text) ? null : Length(field, label, text);

    /// <summary>Volts with up to three decimals, with a comma or a point, with or without the V.</summary>
    public Millivolts Volts(string field, string label, string? text)
    {
        var number = (text ?? "").Trim().TrimEnd('V', 'v').TrimEnd().Replace(',', '.');
        if (number.Length == 0)
            Add(field, $"{label} is empty. Type volts, such as 9.");
        else if (!decimal.TryParse(number, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var volts))
            Add(field, $"{label}: \"{text}\" is not a voltage. Type a number, such as 9 or 7.5.");
        else if (Math.Abs(volts) > 1_000_000 || volts * 1000 % 1 != 0)
            Add(field, $"{label}: {text} has more digits than three after the point. Leave some out.");
        else
            return Millivolts.From((int)(volts * 1000));
        CanBeJudged = false;
        return 9.V;
    }

    /// <summary>Several voltages, separated by spaces, semicolons or slashes.</summary>
    public IEnumerable<Millivolts> VoltsList(string field, string label, string? text)
    {
        var parts = (text ?? "").Split([' ', ';', '/', '\u00a0'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
            .Where(part => !part.Equals("V", StringComparison.OrdinalIgnoreCase))
            .ToList();
        return parts.Count == 0 ? [Volts(field, label, text)] : parts.Select(part => Volts(field, label, part)).ToList();
    }

    public int Whole(string field, string label, int? value)
    {
        if (value is null)
            Add(field, $"{label} is empty. Type a whole number.");
        return value ?? 1;
    }

    /// <summary>Money in the owner's currency, with up to two decimals; null where nothing was typed.</summary>
    public int? Cents(string field, string label, string? text)
    {
        if (string.IsNullOrWhiteSpace(text))
            return null;
        if (decimal.TryParse(text.Trim().Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var amount)
            && amount is >= 0 and <= 10_000_000 && amount * 100 % 1 == 0)
            return (int)(amount * 100);
        Add(field, $"{label}: \"{text.Trim()}\" is not an amount from 0 to 10 000 000 with at most two decimals. Type digits alone, such as 120 or 99.50.");
        return null;
    }

    /// <summary>Kilograms with up to three decimals; null where nothing was typed.</summary>
    public Grams? OptionalKilograms(string field, string label, string? text)
    {
        var number = (text ?? "").Trim().Replace("kg", "", StringComparison.OrdinalIgnoreCase).Trim().Replace(',', '.');
        if (number.Length == 0)
            return null;
        if (decimal.TryParse(number, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var kilograms) && kilograms <= 100_000 && kilograms * 1000 % 1 == 0)
            return Grams.From((int)(kilograms * 1000));
        Add(field, $"{label}: \"{text}\" is not a mass. Type kilograms, such as 25 or 12.5.");
        return null;
    }

    public void Add(string field, string sentence) => errors.Add(new(field, sentence));

    /// <summary>Adds what the domain complains of, at the fields of the thing that stands at <paramref name="place"/> in its document.</summary>
    public void Add(IEnumerable<Complaint> complaints, string place)
    {
        foreach (var complaint in complaints)
        {
            var path = complaint.Path.TrimStart('/');
            Add(path.StartsWith(place, StringComparison.Ordinal) ? path[place.Length..].TrimStart('/') : path, complaint.Message);
        }
    }
}
