using GigRig.Domain.Events;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Planning.Choosing;
using GigRig.Planning.Fitting;
using GigRig.Planning.Powering;

namespace GigRig.Planning;

/// <summary>
/// A rig to show at once and to beat: thing after thing, each into the first good spot beside the others, as long as it brings something and can be fed. Proves
/// nothing and finds nothing where a must takes more than that. Costs milliseconds, whatever the size of the library.
/// </summary>
internal sealed class FirstRig
{
    /// <summary>States of power looked at for one more device.</summary>
    private const int MostStates = 2_000;

    private readonly Question question;
    private readonly Clock clock;
    private readonly QuickFit quick;
    private readonly Want[] wants;
    private readonly int[][] ratings;

    public FirstRig(Question question, PlannerOptions options, Clock clock)
    {
        this.question = question;
        this.clock = clock;
        quick = new(question.Surface, options.Seed);
        wants = [.. Wants(question.Problem.Event)];
        ratings = new int[question.Candidates.Length + question.OffBoard.Length][];
        for (var i = 0; i < ratings.Length; i++)
            ratings[i] = [.. wants.Select(w => BestRating(FunctionsOf(i), w.Role))];
    }

    /// <summary>By most gain for the area, then by most gain. Whether what is found keeps every rule is still to be judged.</summary>
    public IEnumerable<(Choice Choice, Standing[] Standings, IReadOnlyList<Feed> Feeds)> Find()
    {
        foreach (var worth in new Func<int, long, double>[] { (thing, gain) => (double)gain / (1 + AreaOf(thing)), (_, gain) => gain })
        {
            if (clock.IsUp)
                yield break;
            if (new Attempt(this, worth).Fill() is { } found)
                yield return found;
        }
    }

    /// <summary>Every role that is asked for, by a need or a sound; what is a must outweighs everything that is not.</summary>
    private static IEnumerable<Want> Wants(EventType night)
    {
        var all = night.Needs.Sum(n => (long)n.Weight) + night.Sounds.Sum(s => (long)s.Weight);
        foreach (var need in night.Needs)
            yield return new(need.Role, need.Level == NeedLevel.Must ? 1 + all : need.Weight);
        foreach (var (sound, role) in night.Sounds.SelectMany(sound => sound.Roles.Select(role => (sound, role))))
            yield return new(role, sound.Level == NeedLevel.Must ? 1 + all : sound.Weight / sound.Roles.Count);
    }

    private IEnumerable<RoleFunction> FunctionsOf(int thing) =>
        thing < question.Candidates.Length ? question.Candidates[thing].Device.Functions : question.OffBoard[thing - question.Candidates.Length].Functions;

    private static int BestRating(IEnumerable<RoleFunction> functions, Role role) => functions.Where(f => f.Role.Meets(role)).Select(f => f.Rating).DefaultIfEmpty().Max();

    private int AreaOf(int thing) => thing < question.Candidates.Length ? question.Candidates[thing].Shape.BodyArea : 0;

    private int MassOf(int thing) =>
        thing < question.Candidates.Length ? question.Candidates[thing].Device.Mass.Value : question.OffBoard[thing - question.Candidates.Length].Mass.Value;

    private readonly record struct Want(Role Role, long Weight);

    /// <summary>One filling of the board, by one idea of what is worth most.</summary>
    private sealed class Attempt
    {
        private readonly FirstRig first;
        private readonly Func<int, long, double> worth;
        private readonly Question question;
        /// <summary>Those of the candidates, then the supply's: things stand in the layout by their positions here.</summary>
        private readonly Shape[] shapes;
        private readonly bool[] gone;
        private readonly int[] covered;
        private readonly List<int> devices = [];
        private readonly List<int> offBoard = [];
        private readonly Layout layout;
        private IReadOnlyList<Feed> feeds = [];
        private int mass;

        public Attempt(FirstRig first, Func<int, long, double> worth)
        {
            (this.first, this.worth, question) = (first, worth, first.question);
            gone = new bool[first.ratings.Length];
            covered = [.. first.wants.Select(w => BestRating(question.Problem.Amp?.Functions ?? [], w.Role))];
            shapes = question.ShapesOf(question.Candidates);
            layout = new(question.Surface, shapes);
            mass = question.FixedMass;
        }

        public (Choice Choice, Standing[] Standings, IReadOnlyList<Feed> Feeds)? Fill()
        {
            if (!StandFixed() || !MustComeAlong().All(TryTake))
                return null;
            while (!first.clock.IsUp && Next() is { } thing)
                TryTake(thing);
            var standings = layout.Standings.Select(s => s with { Item = s.Item == question.Candidates.Length ? devices.Count : devices.IndexOf(s.Item) }).OrderBy(s => s.Item).ToArray();
            return (new(devices, offBoard), standings, feeds);
        }

        /// <summary>Fixed things first, so that nothing else takes their places; then a supply that stands among the devices.</summary>
        private bool StandFixed()
        {
            foreach (var item in Enumerable.Range(0, shapes.Length).Where(i => shapes[i].IsFixed).Concat(question.SupplyShape is { IsFixed: false } ? [shapes.Length - 1] : []))
            {
                if (first.quick.BestSpot(layout, shapes[item]) is not var (pose, x, y))
                    return false;
                layout.Stand(item, pose, x, y);
            }

            return true;
        }

        private IEnumerable<int> MustComeAlong()
        {
            var options = question.Problem.Options;
            foreach (var id in options.Fixed.Select(f => f.Id).Concat(options.Pin).Distinct().Where(id => id != question.Problem.Amp?.Id && id != question.Problem.Supply?.Id))
            {
                var device = Array.FindIndex(question.Candidates, c => c.Id == id);
                var item = Array.FindIndex(question.OffBoard, i => i.Id == id);
                yield return device >= 0 ? device : item >= 0 ? question.Candidates.Length + item : -1;
            }
        }

        private int? Next()
        {
            int? best = null;
            var most = double.NegativeInfinity;
            for (var thing = 0; thing < gone.Length; thing++)
            {
                if (gone[thing] || GainOf(thing) is not (> 0 and var gain))
                    continue;
                var value = worth(thing, gain);
                if (value > most)
                    (best, most) = (thing, value);
            }

            return best;
        }

        /// <summary>What is new counts a hundred times its weight, a better rating a little.</summary>
        private long GainOf(int thing)
        {
            long gain = 0;
            for (var w = 0; w < covered.Length; w++)
            {
                var rating = first.ratings[thing][w];
                if (rating > covered[w])
                    gain += rating - covered[w] + (covered[w] == 0 ? 100 * first.wants[w].Weight : 0);
            }

            return gain;
        }

        private bool TryTake(int thing)
        {
            if (thing < 0)
                return false;
            gone[thing] = true;
            var isDevice = thing < question.Candidates.Length;
            if (mass + first.MassOf(thing) > (question.Problem.Event.Limits.Mass?.Value ?? int.MaxValue) || (isDevice && !TryStand(thing)))
                return false;
            (isDevice ? devices : offBoard).Add(isDevice ? thing : thing - question.Candidates.Length);
            mass += first.MassOf(thing);
            for (var w = 0; w < covered.Length; w++)
                covered[w] = Math.Max(covered[w], first.ratings[thing][w]);
            return true;
        }

        private bool IsLightAndSmallEnough(int more)
        {
            var problem = question.Problem;
            var supply = problem.Supply is { Mount: not SupplyMount.Off } mounted ? mounted.Mass.Value : 0;
            var load = supply + devices.Append(more).Sum(first.MassOf);
            long covered = (question.SupplyShape?.BodyArea ?? 0) + devices.Append(more).Sum(d => (long)first.AreaOf(d));
            return load <= (problem.Board.MaxLoad?.Value ?? int.MaxValue)
                && 100 * covered <= (100L - (problem.Event.Limits.FreeArea ?? 0)) * question.Surface.Width * question.Surface.Depth;
        }

        private bool TryStand(int device)
        {
            if (devices.Count >= (question.Problem.Event.Limits.Devices ?? int.MaxValue) || !IsLightAndSmallEnough(device))
                return false;
            var shape = question.Candidates[device].Shape;
            (int Pose, int X, int Y)? spot = shape.IsFixed ? null : first.quick.BestSpot(layout, shape);
            if (!shape.IsFixed && spot is null)
                return false;
            if (question.Candidates[device].Consumer is not null)
            {
                Consumer[] hungry = [.. devices.Append(device).Select(d => question.Candidates[d].Consumer).OfType<Consumer>()];
                if (question.Power.Feed(hungry, first.clock, MostStates) is not PowerAnswer.Fed fed)
                    return false;
                feeds = fed.Feeds;
            }

            if (spot is var (pose, x, y))
                layout.Stand(device, pose, x, y);
            return true;
        }
    }
}
