using System.ComponentModel;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;

namespace GigRig.Domain.Documents;

/// <summary>A rig as plain numbers and words: the <c>rig/1</c> document.</summary>
public sealed record RigDocument
{
    public const string FormatWord = "rig/1";

    public required string Format { get; init; }

    public required IReadOnlyList<PlacementDocument> Placements { get; init; }

    public PlacementDocument? Supply { get; init; }

    public IReadOnlyList<string>? OffBoard { get; init; }

    public IReadOnlyList<FeedDocument>? HookUp { get; init; }

    public required ChainDocument Chain { get; init; }

    public IReadOnlyList<SilencedDocument>? Silenced { get; init; }

    public static RigDocument Of(Rig rig) => new()
    {
        Format = FormatWord,
        Placements = [.. rig.Placements.Select(PlacementDocument.Of)],
        Supply = rig.Supply is { } supply ? PlacementDocument.Of(supply) : null,
        OffBoard = rig.OffBoard.OrNothing(id => id.Value),
        HookUp = rig.HookUp.OrNothing(FeedDocument.Of),
        Chain = ChainDocument.Of(rig.Chain),
        Silenced = rig.Silenced.OrNothing(SilencedDocument.Of),
    };

    public Rig ToRig() => new(
        Placements.ToValues(placement => placement.ToPlacement()),
        Supply?.ToPlacement(),
        OffBoard.ToValues(id => new GearId(id)),
        HookUp.ToValues(feed => feed.ToFeed()),
        Chain.ToChain())
    {
        Silenced = Silenced.ToValues(silenced => silenced.ToSilenced()),
    };
}

[Description("Front-left corner of the turned body in millimetres, and its turn in degrees clockwise.")]
public sealed record PlacementDocument
{
    public required string Id { get; init; }

    public required int X { get; init; }

    public required int Y { get; init; }

    [RightAngle]
    public int Turn { get; init; }

    internal static PlacementDocument Of(Placement placement) =>
        new() { Id = placement.Id.Value, X = placement.At.X.Value, Y = placement.At.Y.Value, Turn = (int)placement.Turn };

    internal Placement ToPlacement() => new(new(Id), new(X.Mm, Y.Mm), (Turn)Turn);
}

[Description("What feeds a device. No outlets: its own battery.")]
public sealed record FeedDocument
{
    public required string Device { get; init; }

    public required IReadOnlyList<string> Outlets { get; init; }

    public OutletJoin Join { get; init; }

    [Volts]
    public required decimal Volts { get; init; }

    [Volts]
    public required IReadOnlyList<decimal> Settings { get; init; }

    public bool Reversed { get; init; }

    internal static FeedDocument Of(Feed feed) => new()
    {
        Device = feed.Device.Value,
        Outlets = feed.Outlets,
        Join = feed.Join,
        Volts = feed.Volts.ToVolts(),
        Settings = [.. feed.Settings.Select(volts => volts.ToVolts())],
        Reversed = feed.Reversed,
    };

    internal Feed ToFeed() =>
        new(new(Device), Outlets.ToValueList(), Join, Volts.ToMillivolts(), Settings.ToValues(volts => volts.ToMillivolts()), Reversed);
}

[Description("Audio order: between instrument and amp input, and between send and return.")]
public sealed record ChainDocument
{
    public required IReadOnlyList<string> Front { get; init; }

    public required IReadOnlyList<string> Loop { get; init; }

    internal static ChainDocument Of(Chain chain) =>
        new() { Front = [.. chain.Front.Select(id => id.Value)], Loop = [.. chain.Loop.Select(id => id.Value)] };

    internal Chain ToChain() => new(Front.ToValues(id => new GearId(id)), Loop.ToValues(id => new GearId(id)));
}

[Description("Advice the musician does not want to hear again.")]
public sealed record SilencedDocument
{
    public required string Advice { get; init; }

    public IReadOnlyList<string>? Culprits { get; init; }

    public string Note { get; init; } = "";

    internal static SilencedDocument Of(SilencedAdvice silenced) =>
        new() { Advice = silenced.Advice, Culprits = silenced.Culprits.OrNothing(id => id.Value), Note = silenced.Note };

    internal SilencedAdvice ToSilenced() => new(Advice, Culprits.ToValues(id => new GearId(id)), Note);
}
