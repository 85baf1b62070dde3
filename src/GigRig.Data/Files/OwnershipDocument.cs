using System.Globalization;
using GigRig.Domain;
using GigRig.Domain.Gear;

namespace GigRig.Data.Files;

/// <summary>What the owner keeps about one thing; <see cref="Id"/> is that thing's.</summary>
internal sealed record OwnershipDocument
{
    public const string DayFormat = "yyyy-MM-dd";

    public required string Id { get; init; }

    public GearStatus Status { get; init; }

    public string Note { get; init; } = "";

    public int? ValueCents { get; init; }

    public IReadOnlyList<string>? Tags { get; init; }

    public string? LentTo { get; init; }

    /// <summary>ISO 8601, such as <c>2027-03-06</c>.</summary>
    public string? BackOn { get; init; }

    public IReadOnlyList<Guess>? Guesses { get; init; }

    public static OwnershipDocument Of(Guid id, Ownership ownership) => new()
    {
        Id = id.ToString("d"),
        Status = ownership.Status,
        Note = ownership.Note,
        ValueCents = ownership.ValueCents,
        Tags = ownership.Tags.Count == 0 ? null : ownership.Tags,
        LentTo = ownership.LentTo.Length == 0 ? null : ownership.LentTo,
        BackOn = ownership.BackOn?.ToString(DayFormat, CultureInfo.InvariantCulture),
        Guesses = ownership.Guesses.Count == 0 ? null : ownership.Guesses,
    };

    /// <summary>A day that can't be read is left out; whoever asks for <see cref="HasReadableDay"/> complains of it.</summary>
    public Ownership ToOwnership() => new(Status, Note, ValueCents)
    {
        Tags = (Tags ?? []).ToValueList(),
        LentTo = LentTo ?? "",
        BackOn = Day,
        Guesses = (Guesses ?? []).Distinct().Order().ToValueList(),
    };

    public bool HasReadableDay => BackOn is null || Day is not null;

    private DateOnly? Day => DateOnly.TryParseExact(BackOn, DayFormat, CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? day : null;
}
