using System.ComponentModel;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs.Checks;
using GigRig.Domain.Units;

namespace GigRig.Domain.Documents.Problem;

[Description("The amp played through. Always comes along when given; its channels are functions that share a section.")]
public sealed record AmpDocument
{
    public const string DefaultId = "amp";

    [Within(1, GearId.MaxLength)]
    public string? Id { get; init; }

    [Within(1, Bounds.LongestName)]
    public string? Name { get; init; }

    [Within(0, Bounds.MostMass)]
    public int Mass { get; init; }

    [Within(0, Bounds.MostFunctions)]
    public IReadOnlyList<FunctionDocument>? Functions { get; init; }

    public AmpLoop Loop { get; init; }

    [Description("Whether its channels can be changed by foot.")]
    public bool Footswitch { get; init; }

    [Description("How strong the signal at its send is.")]
    public SignalLevel LoopLevel { get; init; }

    public MainsDocument? Mains { get; init; }

    public static AmpDocument Of(Amp amp) => new()
    {
        Id = amp.Id.Value,
        Name = amp.Name,
        Mass = amp.Mass.Value,
        Functions = amp.Functions.OrNothing(FunctionDocument.Of),
        Loop = amp.Loop,
        Footswitch = amp.Footswitch,
        LoopLevel = amp.LoopLevel,
        Mains = MainsDocument.Of(amp.Mains),
    };

    public Amp ToAmp() =>
        new(new(Id ?? DefaultId), Name ?? Id ?? DefaultId, Mass.G, Functions.ToValues(function => function.ToFunction()), Loop, Footswitch, LoopLevel)
        {
            Mains = Mains?.ToMains() ?? MainsInput.Unknown,
        };
}

[Description("An owned thing that does a role without board space.")]
public sealed record OffBoardDocument
{
    [Within(1, GearId.MaxLength)]
    public required string Id { get; init; }

    [Within(1, Bounds.LongestName)]
    public string? Name { get; init; }

    [Within(0, Bounds.MostMass)]
    public int Mass { get; init; }

    [Within(0, Bounds.MostFunctions)]
    public IReadOnlyList<FunctionDocument>? Functions { get; init; }

    public static OffBoardDocument Of(OffBoardItem item) =>
        new() { Id = item.Id.Value, Name = item.Name, Mass = item.Mass.Value, Functions = item.Functions.OrNothing(FunctionDocument.Of) };

    public OffBoardItem ToItem() => new(new(Id), Name ?? Id, Mass.G, Functions.ToValues(function => function.ToFunction()));
}
