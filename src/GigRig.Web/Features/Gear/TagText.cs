using GigRig.Domain;

namespace GigRig.Web.Features.Gear;

/// <summary>Tags as typed: words with commas between them.</summary>
public static class TagText
{
    public const int LongestNote = 4000;
    private const int Most = 20;
    private const int Longest = 40;

    public static ValueList<string> Read(string? text) =>
        (text ?? "").Split([',', ';', '#'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
            .DistinctBy(tag => tag.ToUpperInvariant())
            .ToValueList();

    public static string Show(ValueList<string> tags) => string.Join(", ", tags);

    /// <summary>Null where nothing is wrong with them.</summary>
    public static string? FaultOf(ValueList<string> tags) =>
        tags.Count > Most ? $"These are {tags.Count} tags; keep at most {Most}."
        : tags.FirstOrDefault(tag => tag.Length > Longest) is { } tooLong ? $"The tag \"{tooLong[..Longest]}…\" has {tooLong.Length} characters; give at most {Longest}."
        : tags.FirstOrDefault(tag => tag.Any(char.IsControl)) is { } odd ? $"The tag \"{new string([.. odd.Where(c => !char.IsControl(c))])}\" holds a control character; take it out."
        : null;
}
