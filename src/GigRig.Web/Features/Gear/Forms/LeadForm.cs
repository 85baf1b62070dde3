using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Web.Shared.Forms;

namespace GigRig.Web.Features.Gear.Forms;

public sealed class LeadForm : GearForm<Lead>
{
    public LeadKind Kind { get; set; }

    public string Long { get; set; } = "";

    public PlugShape FirstPlug { get; set; } = PlugShape.Slim;

    public PlugShape SecondPlug { get; set; } = PlugShape.Slim;

    public int? Count { get; set; } = 1;

    /// <summary>Picofarads for each metre; empty where not known.</summary>
    public int? Capacitance { get; set; }

    protected override string PlaceInDocument => "leads/0";

    protected override void Show(Lead lead)
    {
        Name = lead.Name;
        Kind = lead.Kind;
        Long = Length(lead.Length);
        (FirstPlug, SecondPlug) = (lead.FirstPlug, lead.SecondPlug);
        Count = lead.Count;
        Capacitance = lead.Capacitance;
    }

    protected override Lead Read(EntryReader read) => new(
        Unnamed,
        read.Name("name", "Name", Name),
        Kind,
        read.Length("length", "Length", Long),
        FirstPlug,
        SecondPlug,
        read.Whole("count", "How many", Count),
        Capacitance);

    protected override IEnumerable<Complaint> Complaints(Lead lead) => ThingCheck.Of(lead);
}
