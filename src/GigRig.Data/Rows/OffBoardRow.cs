using GigRig.Domain.Gear;
using GigRig.Domain.Units;

namespace GigRig.Data.Rows;

internal sealed class OffBoardRow : GearRow<OffBoardItem>
{
    public int MassGrams { get; set; }

    public List<FunctionRow> Functions { get; set; } = [];

    public override string Title => $"off-board item \"{Name}\"";

    protected override void SetThing(OffBoardItem thing)
    {
        Name = thing.Name;
        MassGrams = thing.Mass.Value;
        Functions = FunctionRow.From(thing.Functions);
    }

    protected override OffBoardItem ToThing() => new(GearId, Name, MassGrams.G, FunctionRow.To(Functions));
}
