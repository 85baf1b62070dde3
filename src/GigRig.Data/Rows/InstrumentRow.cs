using GigRig.Domain.Gear;

namespace GigRig.Data.Rows;

internal sealed class InstrumentRow : GearRow<Instrument>
{
    public string Kind { get; set; } = "";

    public override string Title => $"instrument \"{Name}\"";

    protected override void SetThing(Instrument thing) => (Name, Kind) = (thing.Name, thing.Kind);

    protected override Instrument ToThing() => new(GearId, Name, Kind);
}
