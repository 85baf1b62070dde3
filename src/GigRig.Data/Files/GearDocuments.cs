using GigRig.Domain.Gear;
using GigRig.Domain.Units;

namespace GigRig.Data.Files;

/// <summary>Some number of equal leads; length in millimetres.</summary>
internal sealed record LeadDocument
{
    public required string Id { get; init; }

    public required string Name { get; init; }

    public required LeadKind Kind { get; init; }

    public required int Length { get; init; }

    public PlugShape FirstPlug { get; init; }

    public PlugShape SecondPlug { get; init; }

    public int Count { get; init; } = 1;

    public static LeadDocument Of(Lead lead) => new()
    {
        Id = lead.Id.Value,
        Name = lead.Name,
        Kind = lead.Kind,
        Length = lead.Length.Value,
        FirstPlug = lead.FirstPlug,
        SecondPlug = lead.SecondPlug,
        Count = lead.Count,
    };

    public Lead ToLead() => new(new(Id), Name, Kind, Length.Mm, FirstPlug, SecondPlug, Count);
}

internal sealed record InstrumentDocument
{
    public required string Id { get; init; }

    public required string Name { get; init; }

    public required string Kind { get; init; }

    public static InstrumentDocument Of(Instrument instrument) => new() { Id = instrument.Id.Value, Name = instrument.Name, Kind = instrument.Kind };

    public Instrument ToInstrument() => new(new(Id), Name, Kind);
}

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
