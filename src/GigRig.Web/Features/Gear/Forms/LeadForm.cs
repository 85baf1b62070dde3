using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.Web.Shared.Forms;

namespace GigRig.Web.Features.Gear.Forms;

public sealed class LeadForm : GearForm<Lead>
{
    private const int MaxCount = 999;
    private const int MaxLength = 100_000;

    public LeadKind Kind { get; set; }

    public string Long { get; set; } = "";

    public PlugShape FirstPlug { get; set; } = PlugShape.Slim;

    public PlugShape SecondPlug { get; set; } = PlugShape.Slim;

    public int? Count { get; set; } = 1;

    protected override string PlaceInDocument => "leads/0";

    protected override void Show(Lead lead)
    {
        Name = lead.Name;
        Kind = lead.Kind;
        Long = Length(lead.Length);
        (FirstPlug, SecondPlug) = (lead.FirstPlug, lead.SecondPlug);
        Count = lead.Count;
    }

    protected override Lead Read(EntryReader read) => new(
        Unnamed,
        read.Name("name", "Name", Name),
        Kind,
        read.Length("length", "Length", Long),
        FirstPlug,
        SecondPlug,
        read.Whole("count", "How many", Count));

    // Leads are no part of a question to the planner yet, so their limits stand here.
    protected override IEnumerable<Complaint> Complaints(Lead lead)
    {
        if (lead.Length < 1.Mm || lead.Length > MaxLength.Mm)
            yield return new("/leads/0/length", $"{lead.Length}", $"1–{MaxLength} mm", $"Length is {lead.Length}; a lead is 1 mm to 100 m long. Check the unit.");
        if (lead.Count is < 1 or > MaxCount)
            yield return new("/leads/0/count", $"{lead.Count}", $"1–{MaxCount}", $"How many is {lead.Count}; it must be 1 to {MaxCount}. Delete the lead if you own none.");
    }
}
