using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;

namespace GigRig.Data.Checks;

/// <summary>What an owner may keep beside the facts of a thing.</summary>
internal static class OwnershipChecks
{
    private const int MostCents = 1_000_000_000;
    private const int MostTags = 20;
    private const int LongestTag = 40;

    public static IEnumerable<Complaint> Of(Ownership ownership) =>
    [
        .. PlainChecks.Word("/status", "status", ownership.Status),
        .. PlainChecks.Note("/note", ownership.Note),
        .. ownership.ValueCents is { } cents ? PlainChecks.Within("/valueCents", "value in hundredths", cents, 0, MostCents) : [],
        .. ownership.LentTo is "" ? [] : PlainChecks.Name("/lentTo", "name of who has it", ownership.LentTo),
        .. Tags(ownership),
        .. ownership.Guesses.Index().SelectMany(guess => PlainChecks.Word($"/guesses/{guess.Index}", "guess", guess.Item)),
    ];

    private static IEnumerable<Complaint> Tags(Ownership ownership)
    {
        if (ownership.Tags.Count > MostTags)
            yield return new("/tags", $"{ownership.Tags.Count}", $"at most {MostTags}", $"It has {ownership.Tags.Count} tags; keep at most {MostTags}.");
        var seen = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        foreach (var (index, tag) in ownership.Tags.Index())
        {
            var path = $"/tags/{index}";
            if (PlainChecks.Name(path, "tag", tag).FirstOrDefault() is { } complaint)
                yield return complaint;
            else if (tag.Length > LongestTag)
                yield return new(path, $"{tag.Length} characters", $"1 to {LongestTag} characters", $"The tag \"{tag[..LongestTag]}…\" has {tag.Length} characters; give at most {LongestTag}.");
            else if (!seen.Add(tag))
                yield return new(path, tag, "once", $"The tag \"{tag}\" is there twice; keep one.");
        }
    }
}
