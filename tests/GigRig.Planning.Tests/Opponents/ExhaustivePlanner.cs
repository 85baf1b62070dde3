using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;

namespace GigRig.Planning.Tests.Opponents;

/// <summary>
/// Answers a tiny problem by trying everything: sets of things from the best down, for each all places and all hook-ups. Shares no code with the planner,
/// the rule book or the scorer; only the nouns and which role meets which need.
/// </summary>
internal sealed class ExhaustivePlanner(RigProblem problem)
{
    private readonly EveryStanding standings = new(problem);
    private readonly EveryHookUp hookUps = new(problem);
    private readonly Dictionary<string, IReadOnlyList<Placement>?> stood = new(StringComparer.Ordinal);
    private readonly Dictionary<string, IReadOnlyList<Feed>?> fed = new(StringComparer.Ordinal);

    /// <summary>A rig for every set of things that has one, and what it scores, the best first.</summary>
    public IEnumerable<(Rig Rig, OneChoice Choice)> BestFirst()
    {
        if (!standings.HasRoomForSupplyBelow)
            yield break;
        foreach (var choice in new EveryChoice(problem).BestFirst())
        {
            var ids = choice.Devices.Select(d => d.Id).ToList();
            if (Remembered(fed, ids, hookUps.Find) is { } feeds && Remembered(stood, ids, standings.Find) is { } places)
                yield return (RigOf(choice, places, feeds), choice);
        }
    }

    private static T Remembered<T>(Dictionary<string, T> answers, IReadOnlyList<GearId> ids, Func<IEnumerable<GearId>, T> find)
    {
        var key = string.Join(' ', ids);
        return answers.TryGetValue(key, out var known) ? known : answers[key] = find(ids);
    }

    private Rig RigOf(OneChoice choice, IReadOnlyList<Placement> places, IReadOnlyList<Feed> feeds) => new(
        places.Where(p => p.Id != problem.Supply?.Id).ToValueList(),
        places.SingleOrDefault(p => p.Id == problem.Supply?.Id),
        choice.OffBoard.Select(i => i.Id).ToValueList(),
        feeds.ToValueList(),
        new Chain(choice.Devices.Where(d => d.CarriesAudio).Select(d => d.Id).ToValueList(), []));
}
