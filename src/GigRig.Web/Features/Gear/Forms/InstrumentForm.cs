using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Web.Shared.Forms;

namespace GigRig.Web.Features.Gear.Forms;

public sealed class InstrumentForm : GearForm<Instrument>
{
    public string Kind { get; set; } = "";

    protected override string PlaceInDocument => "instruments/0";

    protected override void Show(Instrument instrument) => (Name, Kind) = (instrument.Name, instrument.Kind);

    protected override Instrument Read(EntryReader read) => new(Unnamed, read.Name("name", "Name", Name), read.Name("kind", "Kind", Kind));

    protected override IEnumerable<Complaint> Complaints(Instrument instrument) => [];
}
