using System.ComponentModel;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs.Checks;
using GigRig.Domain.Units;

namespace GigRig.Domain.Documents.Problem;

[Description("Some number of equal owned leads. Millimetres of cable between the plugs.")]
public sealed record LeadDocument
{
    [Within(1, GearId.MaxLength)]
    public required string Id { get; init; }

    [Description("Absent: its id.")]
    [Within(1, Bounds.LongestName)]
    public string? Name { get; init; }

    public required LeadKind Kind { get; init; }

    [Within(1, Bounds.MostLeadLength)]
    public required int Length { get; init; }

    public PlugShape FirstPlug { get; init; }

    public PlugShape SecondPlug { get; init; }

    [Within(1, Bounds.MostOfALead)]
    public int Count { get; init; } = 1;

    [Description("Picofarads for each metre. Absent: not known.")]
    [Within(1, Bounds.MostLeadCapacitance)]
    public int? Capacitance { get; init; }

    public static LeadDocument Of(Lead lead) => new()
    {
        Id = lead.Id.Value,
        Name = lead.Name,
        Kind = lead.Kind,
        Length = lead.Length.Value,
        FirstPlug = lead.FirstPlug,
        SecondPlug = lead.SecondPlug,
        Count = lead.Count,
        Capacitance = lead.Capacitance,
    };

    public Lead ToLead() => new(new(Id), Name ?? Id, Kind, Length.Mm, FirstPlug, SecondPlug, Count, Capacitance);
}
