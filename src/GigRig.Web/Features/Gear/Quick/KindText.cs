using System.Text.RegularExpressions;
using GigRig.Domain.Gear;

namespace GigRig.Web.Features.Gear.Quick;

/// <summary>A kind of gear as people write it: <c>device</c>, <c>Supplies</c>, or more narrowly <c>patch lead</c>, <c>guitar cable</c>, <c>electric bass</c>.</summary>
public static partial class KindText
{
    /// <summary>Null where the text is none.</summary>
    public static GearKind? Find(string text) =>
        GearKind.All.FirstOrDefault(kind => new[] { kind.Word, kind.One, kind.Many }.Contains(text, StringComparer.OrdinalIgnoreCase))
        ?? (Lead().IsMatch(text) ? GearKind.Of<Lead>() : Instrument().IsMatch(text) ? GearKind.Of<Instrument>() : null);

    // By the last word: a guitar cable is no guitar, and a bass amp no bass.
    [GeneratedRegex(@"\b(?:leads?|cables?|cords?)$", RegexOptions.IgnoreCase)]
    private static partial Regex Lead();

    [GeneratedRegex(@"\b(?:guitar|bass|keys|keyboard|piano|organ|synth|synthesizer)$", RegexOptions.IgnoreCase)]
    private static partial Regex Instrument();
}
