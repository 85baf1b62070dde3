using GigRig.Domain.Events;
using GigRig.Domain.Gear;
using GigRig.Domain.Wishes;
using GigRig.Planning.Choosing;
using GigRig.Planning.Fitting;

namespace GigRig.Planning.Searching;

/// <summary>
/// Branch and bound over sets of things. Needs are settled one by one: whoever meets a need best is taken, everyone better is left out. What the rest can
/// bring at most is looked up in tables. Every set worth more than the best so far is tried.
/// </summary>
internal sealed class SetSearch
{
    /// <summary>So much work on questions of fit takes as long as a node.</summary>
    private const int WorkANode = 100;

    private readonly Question question;
    private readonly Agenda agenda;
    private readonly Fitter fitter;
    private readonly Clock clock;
    private readonly Func<IReadOnlyList<int>, bool> mayDo;
    private readonly Func<Choice, long, bool> tryOut;
    private readonly Step[] steps;
    private readonly Sounds sounds;
    private readonly bool[] isIn;
    private readonly int[] barred;
    private readonly List<int> taken = [];
    private Bound[][] bounds = [];
    private long[][] left = [];
    private Rooms? rooms;
    private long best = -1L << 60;
    private long nodes;
    private long mostNodes;
    private long mostForNow = long.MaxValue;
    private bool leavesOut;

    public SetSearch(Question question, Agenda agenda, Fitter fitter, Clock clock, Func<IReadOnlyList<int>, bool> mayDo, Func<Choice, long, bool> tryOut)
    {
        (this.question, this.agenda, this.fitter, this.clock, this.mayDo, this.tryOut) = (question, agenda, fitter, clock, mayDo, tryOut);
        (steps, sounds) = (agenda.Steps, agenda.Sounds);
        isIn = new bool[agenda.Things];
        barred = new int[agenda.Things];
    }

    /// <summary>Whether it has looked at as many nodes as it may for now.</summary>
    public bool IsUp => Spent > Math.Min(mostNodes, mostForNow) || clock.IsUp || IsEnough();

    /// <summary>Whether one of two alike things stands for both. Not where sets are passed over that hold only one of them.</summary>
    public bool KeepsLikesInOrder { get; set; } = true;

    /// <summary>Whether what was tried out so far will do.</summary>
    public Func<bool> IsEnough { get; set; } = () => false;

    /// <summary>Work done elsewhere.</summary>
    public void Count(int asManyNodes) => nodes += asManyNodes;

    /// <summary>The most that a set can be worth and is not looked for.</summary>
    public long Beaten => agenda.Worth.IsWhole ? best : best - 1;

    /// <summary>Whether a set of so much worth is what is looked for. Where the worth leaves out a tier, what looks equal may still be better.</summary>
    public bool Beats(long worth) => agenda.Worth.IsWhole ? worth > best : worth >= best;

    /// <summary>Only sets better than this are looked for from now on.</summary>
    public void MustBeat(Score score) => best = Math.Max(best, agenda.Worth.Of(score));

    /// <summary>From now on so many more nodes may be looked at.</summary>
    public void Allow(long more) => (nodes, mostNodes) = (0, more + (fitter.Work / WorkANode));

    /// <summary>Nodes looked at and other work done since it was last allowed more.</summary>
    public long Spent => nodes + (fitter.Work / WorkANode);

    /// <summary>Looks at every set with these things. False where it was up before the end.</summary>
    /// <param name="within">Groups of bounds, of each of which a set keeps one.</param>
    /// <param name="tables">In which these things cost nothing any more.</param>
    /// <param name="most">How many nodes may be looked at here.</param>
    public bool Run(IReadOnlyList<int> given, Bound[][] within, Rooms tables, long most)
    {
        (mostForNow, leavesOut) = (Spent + most, false);
        (bounds, left, rooms) = (within, [.. within.Select(group => group.Select(b => b.Most).ToArray())], tables);
        if (left.All(group => group.Any(most => most >= 0)) && given.All(thing => Take(thing, -1)))
            Settle(0, agenda.Unhosted - given.Sum(thing => agenda.Costs[thing]));
        while (taken.Count > 0)
            Leave(taken[^1], -1);
        var isThrough = !IsUp && !leavesOut;
        mostForNow = long.MaxValue;
        return isThrough;
    }

    /// <summary>Settles the needs from this one on.</summary>
    /// <param name="value">The worth so far.</param>
    private void Settle(int s, long value)
    {
        nodes++;
        if (s == steps.Length)
        {
            Finish(value);
            return;
        }

        var step = steps[s];
        var standing = step.Base;
        foreach (var thing in taken)
            standing = Math.Max(standing, agenda.Rating(thing, s));
        rooms!.Enter(s, taken);
        var branches = new List<(long Most, int Option)>();
        if (standing > 0 || !step.IsMust)
            Consider(step.Options.Length, step.Gain(agenda.Worth, standing), -1);
        for (var o = 0; o < step.Options.Length && step.Options[o].Rating > standing; o++)
        {
            var thing = step.Options[o].Thing;
            if (barred[thing] == 0 && !IsBeforeItsLike(thing))
                Consider(o, step.Gain(agenda.Worth, step.Options[o].Rating) - agenda.Costs[thing], thing);
        }

        branches.Sort((a, b) => a.Most != b.Most ? b.Most.CompareTo(a.Most) : a.Option.CompareTo(b.Option));
        foreach (var (most, o) in branches)
        {
            if (!Beats(most) || IsUp)
                break;
            Branch(s, value, step, o, standing);
        }

        rooms.Leave(s, taken);

        void Consider(int o, long gain, int thing)
        {
            var most = value + gain + rooms.Most(s, thing);
            if (Beats(most))
                branches.Add((most, o));
        }
    }

    /// <summary>Things alike are taken in their order.</summary>
    private bool IsBeforeItsLike(int thing) => KeepsLikesInOrder && agenda.LikeBefore[thing] is >= 0 and var like && !isIn[like];

    private void Branch(int s, long value, Step step, int chosen, int standing)
    {
        var isChange = chosen < step.Options.Length;
        for (var o = 0; o < chosen && step.Options[o].Rating > standing; o++)
            barred[step.Options[o].Thing]++;
        if (!isChange)
        {
            Settle(s + 1, value + step.Gain(agenda.Worth, standing));
        }
        else if (Take(step.Options[chosen].Thing, s))
        {
            Settle(s + 1, value + step.Gain(agenda.Worth, step.Options[chosen].Rating) - agenda.Costs[step.Options[chosen].Thing]);
            Leave(step.Options[chosen].Thing, s);
        }

        for (var o = 0; o < chosen && step.Options[o].Rating > standing; o++)
            barred[step.Options[o].Thing]--;
    }

    private bool Take(int thing, int s)
    {
        if (barred[thing] > 0 || !Fits(thing))
            return false;
        isIn[thing] = true;
        taken.Add(thing);
        Weigh(thing, s, 1);
        if (thing >= question.Candidates.Length || mayDo(taken))
            return true;
        Leave(thing, s);
        return false;
    }

    /// <summary>Whether all bounds still hold with this thing.</summary>
    private bool Fits(int thing)
    {
        for (var g = 0; g < bounds.Length; g++)
        {
            var fits = false;
            for (var b = 0; b < bounds[g].Length && !fits; b++)
                fits = bounds[g][b].Of(thing) <= left[g][b];
            if (!fits)
                return false;
        }

        return true;
    }

    private void Weigh(int thing, int s, int sign)
    {
        for (var g = 0; g < bounds.Length; g++)
        {
            for (var b = 0; b < bounds[g].Length; b++)
                left[g][b] -= sign * bounds[g][b].Of(thing);
        }

        rooms!.Take(thing, s, sign);
    }

    private void Leave(int thing, int s)
    {
        isIn[thing] = false;
        taken.RemoveAt(taken.Count - 1);
        Weigh(thing, s, -1);
    }

    /// <summary>All needs are settled: what remains is whether the sounds can be played, and whether more things would help with them.</summary>
    private void Finish(long value)
    {
        if (IsUp)
            return;
        var musts = 0;
        var missing = new List<int>();
        for (var i = 0; i < sounds.All.Length; i++)
        {
            if (!agenda.Counts(i, taken) || sounds.Plays(i, t => isIn[t]))
                continue;
            missing.Add(i);
            musts += sounds.All[i].Level == NeedLevel.Must ? 1 : 0;
        }

        var known = value - missing.Sum(agenda.WorthOfSound);
        if (musts == 0 && Beats(known))
            leavesOut |= !tryOut(ChoiceOf(taken), agenda.WantsWithin(known));

        var hope = missing.Where(i => sounds.Plays(i, t => isIn[t] || barred[t] == 0)).ToArray();
        if (hope.Length == 0 || hope.Count(i => sounds.All[i].Level == NeedLevel.Must) < musts)
            return;
        var left = new List<int>();
        foreach (var helper in hope.SelectMany(sounds.Players).Distinct().Where(t => !isIn[t] && barred[t] == 0).ToArray())
        {
            if (Beats(known + hope.Sum(agenda.WorthOfSound) - agenda.Costs[helper]) && Take(helper, steps.Length))
            {
                Finish(value - agenda.Costs[helper]);
                Leave(helper, steps.Length);
            }

            barred[helper]++;
            left.Add(helper);
        }

        foreach (var helper in left)
            barred[helper]--;
    }

    private Choice ChoiceOf(IEnumerable<int> things)
    {
        var devices = question.Candidates.Length;
        return new([.. things.Where(t => t < devices).Order()], [.. things.Where(t => t >= devices).Select(t => t - devices).Order()]);
    }
}
