using System.Globalization;
using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Web.Shared;

namespace GigRig.Web.Features.Gear.Quick;

/// <summary>What a line says of a thing beside its facts.</summary>
internal static class OwnershipText
{
    public static (Ownership Ownership, IReadOnlyList<LineFault> Faults) Read(GearLine line)
    {
        var faults = new List<LineFault>();
        var status = GearStatus.Ready;
        if (line[LineField.Status] is { Length: > 0 } word)
        {
            if (Enum.GetValues<GearStatus>().Where(known => Same(Words.Of(known), word) || Same(known.ToString(), word.Replace(" ", ""))).ToList() is [var found])
                status = found;
            else
                faults.Add(new(LineField.Status, $"\"{word}\" is not a status. Give one of {string.Join(", ", Enum.GetValues<GearStatus>().Select(Words.Of))}."));
        }

        var ownership = new Ownership(status, line[LineField.Note], Cents(line, faults)) { Tags = TagText.Read(line[LineField.Tags]) };
        if (ownership.Note.Length > TagText.LongestNote)
            faults.Add(new(LineField.Note, $"The note has {ownership.Note.Length} characters; give at most {TagText.LongestNote}."));
        if (TagText.FaultOf(ownership.Tags) is { } fault)
            faults.Add(new(LineField.Tags, fault));
        return (ownership, faults);
    }

    private static int? Cents(GearLine line, List<LineFault> faults)
    {
        if (line[LineField.Value] is not { Length: > 0 } text)
            return null;
        var digits = text.Trim('€', '$', '£', ' ', ' ').Replace(',', '.');
        if (decimal.TryParse(digits, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var amount) && amount <= 10_000_000 && amount * 100 % 1 == 0)
            return (int)(amount * 100);
        faults.Add(new(LineField.Value, $"\"{text}\" is not an amount from 0 to 10 000 000 with at most two decimals. Type digits alone, such as 120 or 99.50."));
        return null;
    }

    private static bool Same(string a, string b) => a.Equals(b, StringComparison.OrdinalIgnoreCase);
}
