using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.Web.Shared.Forms;

namespace GigRig.Web.Features.Gear.Forms;

public sealed class OffBoardForm : GearForm<OffBoardItem>
{
    public int? Mass { get; set; }

    public List<FunctionRow> Functions { get; set; } = [new()];

    public override IEnumerable<string> UsedRoles => Functions.Select(row => row.Role);

    protected override string PlaceInDocument => "offBoard/0";

    protected override void Show(OffBoardItem item)
    {
        Name = item.Name;
        Mass = item.Mass.Value;
        Functions = FunctionEntries.Show(item.Functions);
    }

    protected override OffBoardItem Read(EntryReader read) => new(
        Unnamed,
        read.Name("name", "Name", Name),
        Grams.From(read.Whole("mass", "Mass", Mass)),
        FunctionEntries.Read(Functions, read));

    protected override IEnumerable<Complaint> Complaints(OffBoardItem item) => ThingCheck.Of(item);
}
