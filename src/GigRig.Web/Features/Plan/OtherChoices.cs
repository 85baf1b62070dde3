using GigRig.Data;
using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;

namespace GigRig.Web.Features.Plan;

/// <summary>Something to ask again with.</summary>
/// <param name="Words">Such as <c>Brick as the supply</c>.</param>
public sealed record OtherChoice(string Words, PlanSelection Selection);

/// <summary>
/// What else could be picked where an answer leaves something open: another owned supply, amp or board, or slimmer plugs. The planner keeps to what was picked,
/// so it is not among what it tried.
/// </summary>
public static class OtherChoices
{
    /// <summary>None where everything that was asked for is covered.</summary>
    public static IEnumerable<OtherChoice> Of(PlanOffer offer, PlanSelection picked, PlanOutcome outcome)
    {
        if (outcome is PlanOutcome.Proposed { Best.Coverage: var coverage } && coverage.Needs.All(need => need.Cover is not null) && coverage.Sounds.All(sound => sound.Covers is not null))
            return [];
        return Others(offer.Supplies, picked.Supply, supply => supply.Name, "supply", id => picked with { Supply = id })
            .Concat(Others(offer.Amps, picked.Amp, amp => amp.Name, "amp", id => picked with { Amp = id }))
            .Concat(Others(offer.Boards, picked.Board, board => board.Name, "board", id => picked with { Board = id }))
            .Concat(Slimmer(offer, picked));
    }

    private static IEnumerable<OtherChoice> Others<T>(ValueList<Stored<T>> offered, string? picked, Func<T, string> name, string kind, Func<string, PlanSelection> with) =>
        offered.Where(thing => thing != PlanSelection.Pick(offered, picked)).Select(thing => new OtherChoice($"{name(thing.Item)} as the {kind}", with(thing.Id.ToString())));

    private static IEnumerable<OtherChoice> Slimmer(PlanOffer offer, PlanSelection picked) =>
        PlugSizes.For(picked.PlugShape ?? offer.OwnedPlugs) == PlugSizes.Usual ? [] : [new("Slim patch plugs", picked with { Plugs = "slim" })];
}
