using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.Web.Shared.Forms;

namespace GigRig.Web.Features.Gear.Forms;

public sealed class AmpForm : GearForm<Amp>
{
    public int? Mass { get; set; }

    public AmpLoop Loop { get; set; }

    public bool Footswitch { get; set; }

    public SignalLevel LoopLevel { get; set; }

    public MainsEntries Mains { get; set; } = new();

    /// <summary>An amp's channels exclude each other, so new ones share a section.</summary>
    public List<FunctionRow> Functions { get; set; } = [new() { Role = "clean", Section = "channel" }];

    public override IEnumerable<string> UsedRoles => Functions.Select(row => row.Role);

    protected override string PlaceInDocument => "amp";

    protected override void Show(Amp amp)
    {
        Name = amp.Name;
        Mass = amp.Mass.Value;
        Loop = amp.Loop;
        Footswitch = amp.Footswitch;
        LoopLevel = amp.LoopLevel;
        Mains = MainsEntries.Show(amp.Mains);
        Functions = FunctionEntries.Show(amp.Functions);
    }

    protected override Amp Read(EntryReader read) => new(
        Unnamed,
        read.Name("name", "Name", Name),
        Grams.From(read.Whole("mass", "Mass", Mass)),
        FunctionEntries.Read(Functions, read),
        Loop,
        Footswitch,
        LoopLevel)
    {
        Mains = Mains.Read(),
    };

    protected override IEnumerable<Complaint> Complaints(Amp amp) => ThingCheck.Of(amp);
}
