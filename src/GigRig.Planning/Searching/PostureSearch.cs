using GigRig.Domain.Gear;
using GigRig.Domain.Wishes;
using GigRig.Planning.Choosing;
using GigRig.Planning.Fitting;

namespace GigRig.Planning.Searching;

/// <summary>
/// What may be turned so as to leave room behind it takes next to nothing of a row, so tables that leave that open say little. Hence first of all: which things stand
/// otherwise than in the row? Looked at best first; once that is decided, sets are searched in which all else stands in the row.
/// </summary>
internal sealed class PostureSearch
{
    /// <summary>Without rows the solver has the better bounds: where there is more than this to choose from, it has the whole question.</summary>
    private const int MostWithoutRows = 40;

    /// <summary>With more things than this that may stand otherwise, postures are left open.</summary>
    private const int MostOpen = 64;

    /// <summary>So are they where more than one thing in so many can never stand in the row.</summary>
    private const int LeastInRow = 4;

    /// <summary>Where a set is looked for, so many tables are looked up at each node.</summary>
    private const int MostTables = 3;

    /// <summary>How finely a bound is counted where a set is looked for: as finely as so much work allows, within these.</summary>
    private const long MostWork = 1_000_000;
    private const int LeastPieces = 1024;
    private const int MostPieces = 1 << 16;

    /// <summary>And before: on a row of deep bodies by the millimetre, mostly.</summary>
    private const int RowPieces = 500;
    private const int RoughPieces = 128;

    /// <summary>
    /// Rounds of fitting shares: where no posture is decided, where some are, to which comes half a round for each thing with several needs where all are; and so many
    /// times fewer for what does not say most.
    /// </summary>
    private const int RootRounds = 60;
    private const int SomeRounds = 6;
    private const int Fewer = 3;

    /// <summary>Where there are no rows, so many nodes are looked at before any shares are fitted: most questions need no more.</summary>
    private const int FirstLook = 300;

    private readonly Question question;
    private readonly Clock clock;
    private readonly Agenda agenda;
    private readonly Bounds bounds;
    private readonly Parts parts;
    private readonly SetSearch sets;
    private readonly int[]? pins;
    private readonly int severalNeeds;

    /// <summary>What is decided but for some things, and what is decided altogether.</summary>
    private readonly PriorityQueue<Postures, (long Most, int Number)> undecided = new();
    private readonly PriorityQueue<Postures, (long Most, int Number)> decided = new();
    private bool isDecidedNext;
    private int number;

    /// <summary>Whether shares are fitted, which takes longer than many a search.</summary>
    private bool isSharp;

    /// <param name="tryOut">Asked of each set that may be the best: its shapes as they are to stand, the most that wants can come to in it, and its ways of turning that are not ruled out.</param>
    public PostureSearch(Question question, PlannerOptions options, Fitter fitter, Clock clock, Action<Choice, Shape[], long, IReadOnlyList<Stance[]>?> tryOut)
    {
        (this.question, this.clock) = (question, clock);
        agenda = new(question);
        bounds = new(question, agenda, fitter, clock);
        parts = new(question, options, fitter, bounds.Ways, clock);
        sets = new(question, agenda, fitter, clock, parts.MayDo, (choice, wants) => tryOut(choice, parts.ShapesOf(choice.Devices), wants, parts.TurnedOf(choice.Devices)));
        pins = Pins();
        severalNeeds = agenda.NeedsOf.Count(steps => steps.Length > 1);
        if (pins is null || !bounds.CanHold)
            return;
        int[] otherwise = [.. Enumerable.Range(0, bounds.Ways.Things).Where(thing => bounds.Ways.Of(thing, Posture.Otherwise).Any())];
        var open = parts.AreRows && otherwise.Length is > 0 and <= MostOpen && LeastInRow * otherwise.Count(thing => bounds.Ways.InRow[thing].Length == 0) <= bounds.Ways.Things;
        var equal = Shares.Equal(agenda);
        isSharp = parts.AreRows;
        Enqueue(Examined(new([], open ? otherwise : [], !open, [equal, equal], null, long.MaxValue), open ? SomeRounds : isSharp ? RootRounds : 1));
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
            Enqueue(Examined(decided.Dequeue(), RootRounds));
        }

        return Look(more);
    }

    private bool Look(long more)
    {
        sets.Allow(more);
        while (sets.Beats(Math.Max(MostOf(undecided), MostOf(decided))))
        {
            if (sets.IsUp)
                return false;

            // In turns: the one finds rigs, and the better these are, the less is left of the other.
            isDecidedNext = !isDecidedNext;
            var (first, second) = isDecidedNext ? (decided, undecided) : (undecided, decided);
            Look(sets.Beats(MostOf(first)) ? first : second);
        }

        return true;
    }

    private static long MostOf(PriorityQueue<Postures, (long Most, int Number)> queue) => queue.TryPeek(out var next, out _) ? next.Most : BoundTable.Never;

    private void Look(PriorityQueue<Postures, (long Most, int Number)> queue)
    {
        var next = queue.Dequeue();
        if (next.Tables is null)
            Enqueue(Examined(next, next.Open.Length > 0 ? SomeRounds : SomeRounds + (severalNeeds / 2)));
        else if (next.Open.Length > 0)
            Branch(next);
        else if (!Search(next))
            Enqueue(next);
    }

    /// <summary>What stands otherwise is that alone; or one more does. Those that leave little hope come first, so that the others are open to few.</summary>
    private void Branch(Postures postures)
    {
        Enqueue(postures with { Open = [], Tables = null });
        var more = postures.Open
            .Select(thing => Glanced(postures with { Otherwise = [.. postures.Otherwise, thing], Open = [.. postures.Open.Where(other => other != thing)], Tables = null }))
            .Where(one => sets.Beats(one.Most)).OrderBy(one => one.Most).ToArray();
        for (var i = 0; i < more.Length; i++)
            Enqueue(more[i] with { Open = [.. more.Skip(i + 1).Select(one => one.Otherwise[^1])] });
    }

    private void Enqueue(Postures postures)
    {
        if (sets.Beats(postures.Most))
            (postures.Open.Length > 0 ? undecided : decided).Enqueue(postures, (-postures.Most, number++));
    }

    /// <summary>At most how much any set is worth that stands like this, by a glance at the row.</summary>
    private Postures Glanced(Postures postures)
    {
        var given = Given(postures);
        var least = long.MaxValue;
        // The row beside the last of them first, as that is a single table and mostly says enough.
        foreach (var group in bounds.Row(postures.Each(bounds.Ways.Things), postures.Otherwise[^1..]).Reverse().TakeWhile(_ => sets.Beats(Known(postures, given, least).Most)))
        {
            var most = BoundTable.Never;
            for (var b = 0; b < group.Length && most < least; b++)
                most = Math.Max(most, Fitted(group[b], postures.Shares[b], given, 1).Most);
            least = Math.Min(least, most);
        }

        return Known(postures, given, least);
    }

    /// <summary>The same by all bounds, with the shares of those fitted that say most.</summary>
    private Postures Examined(Postures postures, int rounds)
    {
        var given = Given(postures);
        var groups = bounds.WorthTables(postures.Each(bounds.Ways.Things), postures.Otherwise)
            .Select(group => group.Select((bound, b) => (Bound: bound, Shares: postures.Shares[b])).Select(one => (one.Bound, Fit: Fitted(one.Bound, one.Shares, given, 1))).ToArray())
            .OrderBy(group => group.Max(one => one.Fit.Most)).Take(MostTables)
            .Select((group, place) => group.Select(one => (one.Bound, Fit: Fitted(one.Bound, one.Fit.Shares, given, place == 0 || postures.IsAnyhow ? rounds : rounds / Fewer))).ToArray())
            .OrderBy(group => group.Max(one => one.Fit.Most)).ToArray();
        return Known(postures, given, groups[0].Max(one => one.Fit.Most)) with
        {
            Tables = [.. groups.Select(group => group.Select(one => (one.Bound, one.Fit.Shares)).ToArray())],
            Shares = [.. groups[0].Select(one => one.Fit.Shares), .. groups[0].Length == 1 ? [groups[0][0].Fit.Shares] : Array.Empty<Shares>()],
        };
    }

    private (Shares Shares, long Most) Fitted(Bound bound, Shares shares, int[] given, int rounds)
    {
        sets.Count(rounds);
        if (bounds.Outlets?.With(given).Most < 0)
            return (shares, BoundTable.Never);
        return shares.With(given).Fitted(agenda, bound.With(given), bounds.Outlets?.With(given), parts.AreRows ? RowPieces : RoughPieces, clock.IsUp ? 1 : rounds);
    }

    private Postures Known(Postures postures, int[] given, long most) =>
        most == long.MaxValue ? postures : postures with { Most = Math.Min(postures.Most, Math.Max(most, BoundTable.Never) + agenda.Unhosted - given.Sum(thing => agenda.Costs[thing])) };

    /// <summary>False where it did not come to the end.</summary>
    private bool Search(Postures postures)
    {
        var given = Given(postures);
        var outlets = bounds.Outlets?.With(given);
        if (outlets?.Most < 0)
            return true;
        var each = postures.Each(bounds.Ways.Things);
        var pieces = (int)Math.Clamp(MostWork / Math.Max(1, agenda.Steps.Sum(step => step.Options.Length)) / (1 + (outlets?.Most ?? 0)), LeastPieces, MostPieces);
        parts.Stand(each);
        sets.Run(given, bounds.Of(each, postures.Otherwise), new Rooms([
            .. postures.Tables!.Select(group => group.Select(one => (Bound: one.Bound.With(given), one.Shares)).Where(one => one.Bound.Most >= 0)
                .Select(one => new Room(agenda, one.Bound, pieces, outlets, one.Shares)).ToArray()),
        ]));
        return !sets.IsUp;
    }

    private int[] Given(Postures postures) => [.. pins!.Concat(postures.Otherwise).Distinct()];

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
