using GigRig.Domain.Gear;
using GigRig.Domain.Units;

namespace GigRig.Data.Rows;

internal sealed class LeadRow : GearRow<Lead>
{
    public LeadKind Kind { get; set; }

    public int Length { get; set; }

    public PlugShape FirstPlug { get; set; }

    public PlugShape SecondPlug { get; set; }

    public int Count { get; set; }

    /// <summary>Picofarads for each metre.</summary>
    public int? Capacitance { get; set; }

    public override string Title => $"lead \"{Name}\"";

    protected override void SetThing(Lead thing)
    {
        Name = thing.Name;
        Kind = thing.Kind;
        Length = thing.Length.Value;
        FirstPlug = thing.FirstPlug;
        SecondPlug = thing.SecondPlug;
        Count = thing.Count;
        Capacitance = thing.Capacitance;
    }

    protected override Lead ToThing() => new(GearId, Name, Kind, Length.Mm, FirstPlug, SecondPlug, Count, Capacitance);
}
