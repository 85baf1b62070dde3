using System.ComponentModel;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Wishes;

namespace GigRig.Domain.Documents.Outcome;

[Description("A thing that comes along. The amp and off-board things stand nowhere.")]
public sealed record ChosenDocument
{
    public required string Id { get; init; }

    public int? X { get; init; }

    public int? Y { get; init; }

    public int? Turn { get; init; }

    [Description("What feeds it. Empty: its own battery. Absent: it takes no power.")]
    public IReadOnlyList<string>? Outlets { get; init; }

    [Description("What arrives.")]
    public decimal? Volts { get; init; }

    [Description("How several outlets are joined.")]
    public OutletJoin? Join { get; init; }

    [Description("The volts to set at each outlet.")]
    public IReadOnlyList<decimal>? Settings { get; init; }

    [Description("True where it is fed through a polarity-reversing lead.")]
    public bool? Reversed { get; init; }

    [Description("The roles, of needs and of sounds, for which it is the cover.")]
    public required IReadOnlyList<string> Covers { get; init; }

    internal static IEnumerable<ChosenDocument> AllIn(Proposal proposal, RigProblem problem)
    {
        var covers = CoversOf(proposal.Coverage);
        foreach (var placement in proposal.Rig.Placements)
            yield return Bare(placement.Id).Standing(placement).Fed(proposal.Rig.HookUp.FirstOrDefault(feed => feed.Device == placement.Id));
        if (problem.Amp is { } amp)
            yield return Bare(amp.Id);
        foreach (var id in proposal.Rig.OffBoard)
            yield return Bare(id);

        ChosenDocument Bare(GearId id) => new() { Id = id.Value, Covers = [.. covers[id]] };
    }

    private static ILookup<GearId, string> CoversOf(Coverage coverage) =>
        coverage.Needs.Select(need => need.Cover).OfType<Cover>()
            .Concat(coverage.Sounds.SelectMany(sound => sound.Covers ?? []))
            .DistinctBy(cover => (cover.Thing, cover.Role))
            .ToLookup(cover => cover.Thing, cover => cover.Role.Key);

    private ChosenDocument Standing(Placement placement) =>
        this with { X = placement.At.X.Value, Y = placement.At.Y.Value, Turn = (int)placement.Turn };

    private ChosenDocument Fed(Feed? feed) => feed is null ? this : this with
    {
        Outlets = feed.Outlets,
        Volts = feed.OnBattery ? null : feed.Volts.ToVolts(),
        Join = feed.Join == OutletJoin.Single ? null : feed.Join,
        Settings = feed.Settings.OrNothing(volts => volts.ToVolts()),
        Reversed = feed.Reversed ? true : null,
    };
}
