using GigRig.Domain.Gear;
using GigRig.Domain.Units;

namespace GigRig.Data.Rows;

internal sealed class AmpRow : GearRow<Amp>
{
    public int MassGrams { get; set; }

    public AmpLoop Loop { get; set; }

    public bool Footswitch { get; set; }

    public SignalLevel LoopLevel { get; set; }

    public MainsRow Mains { get; set; } = new();

    public List<FunctionRow> Functions { get; set; } = [];

    public override string Title => $"amp \"{Name}\"";

    protected override void SetThing(Amp thing)
    {
        Name = thing.Name;
        MassGrams = thing.Mass.Value;
        Loop = thing.Loop;
        Footswitch = thing.Footswitch;
        LoopLevel = thing.LoopLevel;
        Mains = MainsRow.From(thing.Mains);
        Functions = FunctionRow.From(thing.Functions);
    }

    protected override Amp ToThing() =>
        new(GearId, Name, MassGrams.G, FunctionRow.To(Functions), Loop, Footswitch, LoopLevel) { Mains = Mains.ToMains() };
}
