using GigRig.Domain.Gear;
using GigRig.Domain.Wishes;
using GigRig.Planning.Choosing;
using GigRig.Planning.Fitting;

namespace GigRig.Planning.Searching;

/// <summary>
/// What may be turned so as to leave room behind it takes next to nothing of a row, and next to a lenient body gaps are small, so tables that leave that open say little. Hence first
/// of all: which things stand otherwise than in the row, and which lenient ones are there? Looked at best first; once that is decided, sets are searched in which all else stands in
/// the row, first a little of each, as a good rig rules out most, then more and more.
/// </summary>
internal sealed class PostureSearch
{
    /// <summary>Without rows the solver has the better bounds: where there is more than this to choose from, it has the whole question.</summary>
    private const int MostWithoutRows = 40;

    /// <summary>With more than this that may stand otherwise or is lenient, postures are left open.</summary>
    private const int MostOpen = 72;

    /// <summary>So are they where more than one thing in so many can never stand in the row.</summary>
    private const int LeastInRow = 4;

    /// <summary>How finely a bound is counted where a set is looked for: as finely as so much work allows, within these.</summary>
    private const long MostWork = 1_000_000;
    private const int LeastPieces = 1024;
    private const int MostPieces = 1 << 16;

    /// <summary>
    /// Rounds of fitting shares: where no posture is decided; where some are, to which comes half a round for each thing with several needs where all are.
    /// </summary>
    private const int RootRounds = 60;
    private const int SomeRounds = 6;

    /// <summary>Where there are no rows, so many nodes are looked at before any shares are fitted: most questions need no more.</summary>
    private const int FirstLook = 300;

    /// <summary>Where postures are decided, so many nodes are looked at first, and questions of fit have so many times fewer nodes; with each further look four times more of both, to the last.</summary>
    private const long FirstNodes = 256;
    private const int FewerAtFirst = 64;
    private const int MostLooks = 15;

    private readonly Question question;
    private readonly Clock clock;
    private readonly Agenda agenda;
    private readonly Bounds bounds;
    private readonly Parts parts;
    private readonly SetSearch sets;
    private readonly PostureBounds promises;
    private readonly int[]? pins;
    private readonly int severalNeeds;

    /// <summary>What is decided but for some things, best first; and what is decided altogether, few odd things first, as there bounds promise least that is not so.</summary>
    private readonly PriorityQueue<Postures, (int Looks, int Size, long Most, int Number)> undecided = new();
    private readonly PriorityQueue<Postures, (int Looks, int Size, long Most, int Number)> decided = new();
    private long spentOnDecided;
    private long spentOnUndecided;
    private int number;

    /// <summary>How many times fewer nodes questions of fit have for now.</summary>
    private int fewer = 1;

    /// <summary>Whether shares are fitted, which takes longer than many a search.</summary>
    private bool isSharp;

    /// <param name="tryOut">
    /// Asked of each set that may be the best: its shapes as they are to stand, the most that wants can come to in it, its ways of turning that are not ruled out, and with how many times
    /// fewer nodes it is to be looked at. False where it should be asked again with more.
    /// </param>
    public PostureSearch(Question question, PlannerOptions options, Fitter fitter, Clock clock, Func<Choice, Shape[], long, IReadOnlyList<Stance[]>?, int, bool> tryOut)
    {
        (this.question, this.clock) = (question, clock);
        agenda = new(question);
        bounds = new(question, agenda, fitter, clock);
        parts = new(question, options, fitter, bounds.Ways, clock);
        sets = new(question, agenda, fitter, clock, parts.MayDo, (choice, wants) => tryOut(choice, parts.ShapesOf(choice.Devices), wants, parts.TurnedOf(choice.Devices), fewer));
        pins = Pins();
        promises = new(agenda, bounds, sets, pins ?? [], parts.AreRows, clock);
        severalNeeds = agenda.NeedsOf.Count(steps => steps.Length > 1);
        if (pins is null || !bounds.CanHold)
            return;
        var ways = bounds.Ways;
        Oddity[] odd =
        [
            .. Enumerable.Range(0, ways.Things).Where(thing => ways.Of(thing, Posture.Otherwise).Any()).Select(thing => new Oddity(thing, Posture.Otherwise)),
            .. bounds.Lenient.Select(thing => new Oddity(thing, Posture.InRow)),
        ];
        var neverInRow = Enumerable.Range(0, ways.Things).Count(thing => !ways.Of(thing, Posture.InRow).Any());
        var open = parts.AreRows && odd.Length is > 0 and <= MostOpen && LeastInRow * neverInRow <= ways.Things;
        var equal = Shares.Equal(agenda);
        isSharp = parts.AreRows;
        Enqueue(promises.Examined(new([], open ? odd : [], !open, [equal, equal], null, long.MaxValue), open ? SomeRounds : isSharp ? RootRounds : 1));
    }

    /// <summary>Whether one of two alike things stands for both. Not where sets are passed over that hold only one of them.</summary>
    public bool KeepsLikesInOrder
    {
        init => sets.KeepsLikesInOrder = value;
    }

    /// <summary>Whether what was tried out so far will do.</summary>
    public Func<bool> IsEnough
    {
        init => sets.IsEnough = value;
    }

    /// <summary>How many nodes are worth looking at; none of what is better left to the solver.</summary>
    public static int NodesFor(Question question, PlannerOptions options, Fitter fitter) =>
        question.Candidates.Length <= MostWithoutRows || fitter.Turning.IsRow(question.Candidates.Select(c => c.Shape)) ? options.SetNodes : 0;

    /// <summary>The most that wants can come to in what is not looked at to the end yet.</summary>
    public long WantsBound => agenda.WantsWithin(Math.Max(MostOf(undecided), MostOf(decided)));

    /// <summary>Only sets better than this are looked for from now on.</summary>
    public void MustBeat(Score score) => sets.MustBeat(score);

    /// <summary>True where everything was looked at. What is asked again goes on where it was left, knowing more.</summary>
    /// <param name="more">How many nodes may be looked at this time.</param>
    public bool Run(long more)
    {
        if (!isSharp)
        {
            if (Look(Math.Min(more, FirstLook)))
                return true;
            if (clock.IsUp || sets.IsEnough())
                return false;
            isSharp = true;
            Enqueue(promises.Examined(decided.Dequeue(), RootRounds));
        }

        return Look(more);
    }

    private bool Look(long more)
    {
        sets.Allow(more);
        while (undecided.Count + decided.Count > 0)
        {
            if (sets.IsUp)
                return false;

            // As much of one as of the other: the one finds rigs, and the better these are, the less is left of the other.
            var isDecidedNext = undecided.Count == 0 || (decided.Count > 0 && spentOnDecided <= spentOnUndecided);
            var before = sets.Spent;
            Look(isDecidedNext ? decided : undecided);
            if (isDecidedNext)
                spentOnDecided += sets.Spent - before;
            else
                spentOnUndecided += sets.Spent - before;
        }

        return true;
    }

    private static long MostOf(PriorityQueue<Postures, (int Looks, int Size, long Most, int Number)> queue) =>
        queue.UnorderedItems.Select(one => one.Element.Most).DefaultIfEmpty(BoundTable.Never).Max();

    private void Look(PriorityQueue<Postures, (int Looks, int Size, long Most, int Number)> queue)
    {
        var next = queue.Dequeue();
        if (!sets.Beats(next.Most))
            return;
        if (next.Tables is null)
            Enqueue(promises.Examined(next, next.Open.Length > 0 ? SomeRounds : SomeRounds + (severalNeeds / 2)));
        else if (next.Open.Length > 0)
            Branch(next);
        else if (!Search(next))
            Enqueue(next with { Looks = Math.Min(next.Looks + 1, MostLooks) });
    }

    /// <summary>What is decided is all that is odd; or one more thing is. Those that leave little hope come first, so that the others are open to few.</summary>
    private void Branch(Postures postures)
    {
        Enqueue(postures with { Open = [], Tables = null });
        var more = postures.Open
            .Select(one => promises.Glanced(postures with { Decided = [.. postures.Decided, one], Open = [.. postures.Open.Where(other => other.Thing != one.Thing)], Tables = null }))
            .Where(one => sets.Beats(one.Most)).OrderBy(one => one.Most).ToArray();
        for (var i = 0; i < more.Length; i++)
            Enqueue(more[i] with { Open = [.. more.Skip(i + 1).Select(one => one.Decided[^1]).Where(one => one.Thing != more[i].Decided[^1].Thing)] });
    }

    private void Enqueue(Postures postures)
    {
        if (sets.Beats(postures.Most))
            (postures.Open.Length > 0 ? undecided : decided).Enqueue(postures, (postures.Looks, postures.Open.Length > 0 ? 0 : postures.Decided.Length, -postures.Most, number++));
    }

    /// <summary>False where it did not come to the end.</summary>
    private bool Search(Postures postures)
    {
        var given = promises.Given(postures);
        var outlets = bounds.Outlets?.With(given);
        if (outlets?.Most < 0)
            return true;
        var each = postures.Each(bounds.Ways.Things, bounds.Lenient);
        var pieces = (int)Math.Clamp(MostWork / Math.Max(1, agenda.Steps.Sum(step => step.Options.Length)) / (1 + (outlets?.Most ?? 0)), LeastPieces, MostPieces);
        parts.Stand(each);
        fewer = postures.IsAnyhow ? 1 : Math.Max(1, FewerAtFirst >> (2 * postures.Looks));
        return sets.Run(given, bounds.Of(each, postures.Otherwise), new Rooms([
            .. postures.Tables!.Select(group => group.Select(one => (Bound: one.Bound.With(given), one.Shares)).Where(one => one.Bound.Most >= 0)
                .Select(one => new Room(agenda, one.Bound, pieces, outlets, one.Shares)).ToArray()),
        ]), postures.IsAnyhow ? long.MaxValue / 2 : FirstNodes << (2 * postures.Looks));
    }

    /// <summary>Null where a pinned thing can never come along: that leaves nothing to choose.</summary>
    private int[]? Pins()
    {
        var options = question.Problem.Options;
        int[] things =
        [
            .. options.Pin.Concat(options.Fixed.Select(place => place.Id)).Distinct()
                .Where(id => id != question.Problem.Amp?.Id && id != question.Problem.Supply?.Id).Select(ThingNamed),
        ];
        return things.Contains(-1) ? null : things;
    }

    private int ThingNamed(GearId id)
    {
        var device = Array.FindIndex(question.Candidates, c => c.Id == id);
        var item = Array.FindIndex(question.OffBoard, i => i.Id == id);
        return device >= 0 ? device : item >= 0 ? question.Candidates.Length + item : -1;
    }
}
