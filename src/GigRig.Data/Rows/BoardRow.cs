using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Units;

namespace GigRig.Data.Rows;

internal sealed class BoardRow : GearRow<Board>
{
    public int Width { get; set; }

    public int Depth { get; set; }

    public int MassGrams { get; set; }

    public List<RailRow> Rails { get; set; } = [];

    public List<KeepOutRow> KeepOuts { get; set; } = [];

    public int OverhangFront { get; set; }

    public int OverhangRear { get; set; }

    public int OverhangLeft { get; set; }

    public int OverhangRight { get; set; }

    public int? MaxLoadGrams { get; set; }

    public int? ClearanceUnder { get; set; }

    public int? ClearanceOver { get; set; }

    public override string Title => $"board \"{Name}\"";

    protected override void SetThing(Board thing)
    {
        Name = thing.Name;
        Width = thing.Width.Value;
        Depth = thing.Depth.Value;
        MassGrams = thing.Mass.Value;
        Rails = [.. thing.Rails.Select(RailRow.From)];
        KeepOuts = [.. thing.KeepOuts.Select(KeepOutRow.From)];
        OverhangFront = thing.Overhang.Front.Value;
        OverhangRear = thing.Overhang.Rear.Value;
        OverhangLeft = thing.Overhang.Left.Value;
        OverhangRight = thing.Overhang.Right.Value;
        MaxLoadGrams = thing.MaxLoad?.Value;
        ClearanceUnder = thing.ClearanceUnder?.Value;
        ClearanceOver = thing.ClearanceOver?.Value;
    }

    protected override Board ToThing() => new(
        GearId,
        Name,
        Width.Mm,
        Depth.Mm,
        MassGrams.G,
        Rails.Select(rail => rail.ToRail()).ToValueList(),
        KeepOuts.Select(rect => rect.ToRect()).ToValueList(),
        new Overhang(OverhangFront.Mm, OverhangRear.Mm, OverhangLeft.Mm, OverhangRight.Mm),
        MaxLoadGrams?.G,
        ClearanceUnder?.Mm,
        ClearanceOver?.Mm);
}
