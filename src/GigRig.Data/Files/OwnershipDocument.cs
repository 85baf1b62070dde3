using GigRig.Domain.Gear;

namespace GigRig.Data.Files;

/// <summary>What the owner keeps about one thing; <see cref="Id"/> is that thing's.</summary>
internal sealed record OwnershipDocument
{
    public required string Id { get; init; }

    public GearStatus Status { get; init; }

    public string Note { get; init; } = "";

    public int? ValueCents { get; init; }

    public static OwnershipDocument Of(Guid id, Ownership ownership) =>
        new() { Id = id.ToString("d"), Status = ownership.Status, Note = ownership.Note, ValueCents = ownership.ValueCents };

    public Ownership ToOwnership() => new(Status, Note, ValueCents);
}
