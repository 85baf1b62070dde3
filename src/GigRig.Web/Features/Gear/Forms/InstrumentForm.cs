using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Web.Shared.Forms;

namespace GigRig.Web.Features.Gear.Forms;

/// <summary>What drives the lead of an instrument.</summary>
public enum LeadDriver
{
    NotKnown,
    Pickup,
    Preamp,
}

public sealed class InstrumentForm : GearForm<Instrument>
{
    public string Kind { get; set; } = "";

    public InstrumentFamily Family { get; set; }

    public LeadDriver Driver { get; set; }

    /// <summary>Millihenries; empty where not known, as are the next two.</summary>
    public int? Inductance { get; set; }

    /// <summary>Picofarads.</summary>
    public int? Capacitance { get; set; }

    /// <summary>Ohms.</summary>
    public int? Volume { get; set; }

    protected override string PlaceInDocument => "instrument";

    protected override void Show(Instrument instrument)
    {
        (Name, Kind, Family) = (instrument.Name, instrument.Kind, instrument.Family);
        (Inductance, Capacitance, Volume, var active) = instrument.Pickup;
        Driver = active switch { null => LeadDriver.NotKnown, true => LeadDriver.Preamp, false => LeadDriver.Pickup };
    }

    protected override Instrument Read(EntryReader read) => new(Unnamed, read.Name("name", "Name", Name), read.Name("kind", "Kind", Kind), Family)
    {
        Pickup = new(Inductance, Capacitance, Volume, Driver == LeadDriver.NotKnown ? null : Driver == LeadDriver.Preamp),
    };

    protected override IEnumerable<Complaint> Complaints(Instrument instrument) => ThingCheck.Of(instrument);
}
