using GigRig.Domain;
using GigRig.Domain.Rigs;
using GigRig.Planning.Choosing;
using GigRig.Planning.Fitting;

namespace GigRig.Planning.Arranging;

/// <summary>
/// Same things, less patch lead: stands them in chain order from either end and in seeded variations of it, and keeps the layout with the shortest leads.
/// Anytime: never worse than what it was given.
/// </summary>
internal sealed class Arranger(Question question, PlannerOptions options, Fitter fitter)
{
    private static readonly Func<int, int, Pose, long>[] Likings =
    [
        (x, y, _) => ((long)x * 10_000) + y,
        (x, y, _) => ((long)x * 10_000) - y,
        (x, y, _) => ((long)y * 10_000) + x,
        (x, y, _) => (-(long)y * 10_000) + x,
    ];

    public Proposal Arrange(Choice choice, Proposal given, Clock clock, Action<Proposal> found)
    {
        if (choice.Devices.Count < 2)
            return given;
        var shapes = question.ShapesOf([.. choice.Devices.Select(i => question.Candidates[i])]);
        var builder = new RigBuilder(question);
        var random = new Random(options.Seed);
        var best = given;
        var order = InChainOrder(choice, given.Rig.Chain, shapes.Length);
        for (var attempt = 0; attempt < options.ArrangeTries && !clock.IsUp; attempt++)
        {
            var next = attempt < 2 * Likings.Length ? [.. attempt % 2 == 0 ? order : order.Reverse()] : Varied(order, random);
            var layout = fitter.Quick.Place(shapes, next, Likings[attempt / 2 % Likings.Length]);
            if (layout.Standings.Count < shapes.Length)
                continue;
            var proposal = builder.Build(choice, [.. layout.Standings.OrderBy(s => s.Item)], [.. given.Rig.HookUp]);
            if (proposal.Score.CompareTo(best.Score) <= 0)
                continue;
            best = proposal;
            order = next;
            found(best);
        }

        return best;
    }

    /// <summary>Positions in the choice, first of the chain first; the supply and what carries no audio last.</summary>
    private int[] InChainOrder(Choice choice, Chain chain, int count)
    {
        var rank = chain.Front.Concat(chain.Loop).Select((id, i) => (id, i)).ToDictionary(c => c.id, c => c.i);
        return [.. Enumerable.Range(0, count).OrderBy(item => item < choice.Devices.Count ? rank.GetValueOrDefault(question.Candidates[choice.Devices[item]].Id, count) : count)];
    }

    private static int[] Varied(int[] order, Random random)
    {
        int[] next = [.. order];
        var from = random.Next(next.Length);
        var to = random.Next(next.Length);
        (next[from], next[to]) = (next[to], next[from]);
        return next;
    }
}
