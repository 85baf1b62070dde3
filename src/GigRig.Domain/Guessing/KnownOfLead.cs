using System.Text.RegularExpressions;
using GigRig.Domain.Gear;
using GigRig.Domain.Units;

namespace GigRig.Domain.Guessing;

/// <summary>The little that is known of some equal leads: how long they are. The rest is filled in with what is usual, and marked.</summary>
public sealed partial record KnownOfLead(string Name, Millimetres Length)
{
    /// <summary>Patch leads are sold up to 90 cm and long ones from 3 m on (common practice, no source); the line between them is ours.</summary>
    private static readonly Millimetres LongestPatch = 1000.Mm;

    public LeadKind? Kind { get; init; }

    public (PlugShape First, PlugShape Second)? Plugs { get; init; }

    /// <summary>How many of them.</summary>
    public int Count { get; init; } = 1;

    /// <summary>Without a kind it is what its name or else its length says; on the board plugs are angled, off it straight (common practice, no source).</summary>
    public (Lead Lead, ValueList<Guess> Guesses) Fill(GearId id)
    {
        var kind = Kind ?? NamedIn(Name) ?? (Length <= LongestPatch ? LeadKind.Patch : LeadKind.Instrument);
        var plug = kind == LeadKind.Patch ? PlugShape.Angled : PlugShape.Straight;
        var (first, second) = Plugs ?? (plug, plug);
        return (new(id, Name, kind, Length, first, second, Count), GuessList.Of((Guess.LeadKind, Kind is null), (Guess.Plugs, Plugs is null)));
    }

    /// <summary>The kind a text names, such as <c>patch lead</c>; null where it names none, or several.</summary>
    public static LeadKind? NamedIn(string text) =>
        KindWord().Matches(text).Select(word => Enum.Parse<LeadKind>(word.Value, ignoreCase: true)).Distinct().ToList() is [var kind] ? kind : null;

    [GeneratedRegex(@"\b(?:patch|instrument|loop|power)\b", RegexOptions.IgnoreCase)]
    private static partial Regex KindWord();
}
