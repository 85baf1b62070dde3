using System.Text.RegularExpressions;
using GigRig.Domain.Gear;

namespace GigRig.Domain.Guessing;

/// <summary>The little that is known of an instrument: what it is called. The rest is filled in with what is usual, and marked.</summary>
public sealed partial record KnownOfInstrument(string Name)
{
    /// <summary>In the owner's words.</summary>
    public string? Kind { get; init; }

    /// <summary>True for a preamp of its own, false for a pickup with nothing behind it; null where not known, which is a value and no guess.</summary>
    public bool? Active { get; init; }

    /// <summary>What it is wired like follows from the words of its kind, or else of its name: a guitar where they name nothing else.</summary>
    public (Instrument Instrument, ValueList<Guess> Guesses) Fill(GearId id)
    {
        var family = NamedIn(Kind ?? Name) ?? InstrumentFamily.Guitar;
        var kind = Kind ?? family switch
        {
            InstrumentFamily.Bass => "Bass",
            InstrumentFamily.Keyboard => "Keys",
            _ => "Electric guitar",
        };
        return (new(id, Name, kind, family) { Pickup = Pickup.Unknown with { Active = Active } }, GuessList.Of((Guess.Family, Kind is null)));
    }

    /// <summary>What a text names, such as <c>electric bass</c>; null where it names nothing that is known, or several. A bass guitar is a bass.</summary>
    public static InstrumentFamily? NamedIn(string text) =>
        FamilyWord().Matches(text).Select(word => FamilyOf(word.Value.ToLowerInvariant())).Distinct().ToList() switch
        {
            [var family] => family,
            [InstrumentFamily.Bass, InstrumentFamily.Guitar] => InstrumentFamily.Bass,
            _ => null,
        };

    private static InstrumentFamily FamilyOf(string word) => word switch
    {
        "guitar" => InstrumentFamily.Guitar,
        "bass" => InstrumentFamily.Bass,
        _ => InstrumentFamily.Keyboard,
    };

    [GeneratedRegex(@"\b(?:guitar|bass|keys|keyboard|piano|organ|synth|synthesizer)\b", RegexOptions.IgnoreCase)]
    private static partial Regex FamilyWord();
}
