using System.Globalization;
using System.Text.Json;
using GigRig.Domain.Units;

namespace GigRig.Domain.Rigs.Checks;

/// <summary>A place in the document and the thing found there, to complain about.</summary>
/// <param name="Thing">As it reads in a sentence: <c>device Echo</c>.</param>
internal readonly record struct Spot(CheckList List, string Pointer, string Thing)
{
    private const int LongestShown = 40;

    public Spot Member(string name, string thing) => this with { Pointer = Pointer.Member(name), Thing = thing };

    public Spot Item(string list, int index, string thing) => this with { Pointer = Pointer.Member(list).Item(index), Thing = thing };

    public void Say(string member, string value, string limit, string message) =>
        List.Add(member.Length == 0 ? Pointer : Pointer.Member(member), value, limit, message);

    /// <param name="what">As it begins a sentence, where the member's own name does not say it well.</param>
    public void Whole(string member, int value, int least, int most, string unit = "", string? what = null)
    {
        if (value < least || value > most)
            Say(member, $"{value}", $"{least} to {most}{unit}", $"{what ?? $"The {Spoken(member)} of {Thing}"} is {value}{unit}; give {least} to {most}{unit}.");
    }

    public void Length(string member, Millimetres value, int least, int most, string? what = null) => Whole(member, value.Value, least, most, " mm", what);

    public void Mass(string member, Grams value, int most = Bounds.MostMass, string? what = null) => Whole(member, value.Value, 0, most, " g", what);

    /// <param name="what">As it begins a sentence.</param>
    public void Volts(string member, string what, Millivolts value)
    {
        var (least, most) = (Bounds.LeastMillivolts.MilliV, Bounds.MostMillivolts.MilliV);
        if (value < least || value > most)
            Say(member, $"{value}", $"{least} to {most}", $"{what} is {value}; give {least} to {most}.");
    }

    /// <summary>Not blank, not too long, nothing unprintable.</summary>
    public void Text(string member, string? text, int longest)
    {
        if (string.IsNullOrWhiteSpace(text))
            Say(member, "nothing", $"1 to {longest} characters", $"The {Spoken(member)} of {Thing} is empty; give 1 to {longest} characters.");
        else if (text.Length > longest)
            Say(member, Shown(text), $"1 to {longest} characters", $"The {Spoken(member)} of {Thing} has {text.Length} characters; give at most {longest}.");
        else if (text.Any(char.IsControl))
            Say(member, Shown(text), "no control characters", $"The {Spoken(member)} of {Thing} holds a line break or another control character; take it out.");
        else if (text.HasLostCharacters())
            Say(member, Shown(text), "readable characters", $"The {Spoken(member)} of {Thing} holds a character that was lost on the way; type it again.");
    }

    public void Count(string member, int count, int most, string? nouns = null)
    {
        if (count > most)
            Say(member, $"{count}", $"at most {most}", $"{Capital(Thing)} has {count} {nouns ?? Spoken(member)}; give at most {most}.");
    }

    public void Word<TWord>(string member, TWord word, string? what = null)
        where TWord : struct, Enum
    {
        if (Enum.IsDefined(word))
            return;
        var words = string.Join(", ", Enum.GetNames<TWord>().Select(JsonNamingPolicy.CamelCase.ConvertName));
        Say(member, $"{word}", words, $"{what ?? $"The {Spoken(member)} of {Thing}"} is {word}; give one of {words}.");
    }

    /// <summary>Cut short, with what cannot be printed left out.</summary>
    public static string Shown(string? text) => new string([.. (text ?? "").Where(c => !char.IsControl(c))]).Shortened(LongestShown);

    public static string Capital(string sentence) => sentence.Length == 0 ? sentence : char.ToUpper(sentence[0], CultureInfo.InvariantCulture) + sentence[1..];

    /// <summary><c>totalCurrent</c> as it is said: <c>total current</c>.</summary>
    private static string Spoken(string member) =>
        string.Concat(member.Select(c => char.IsUpper(c) ? $" {char.ToLowerInvariant(c)}" : c.ToString()));
}
