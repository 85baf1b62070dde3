using GigRig.Domain.Events;

namespace GigRig.Planning.Searching;

/// <summary>The needs in the order they are settled, who can meet them, and what each thing costs.</summary>
internal sealed class Agenda
{
    private readonly int[,] ratings;
    private readonly int[] hosts;
    private readonly long[][] gains;

    public Agenda(Question question)
    {
        Worth = new(question);
        Sounds = new(question);
        (Steps, hosts) = StepsOf(question, Sounds);
        Things = question.Candidates.Length + question.OffBoard.Length;
        ratings = new int[Things, Steps.Length];
        var uses = new List<int>[Things];
        for (var t = 0; t < Things; t++)
            uses[t] = [];
        for (var s = 0; s < Steps.Length; s++)
        {
            foreach (var option in Steps[s].Options)
            {
                ratings[option.Thing, s] = option.Rating;
                uses[option.Thing].Add(s);
            }
        }

        NeedsOf = [.. uses.Select(u => u.ToArray())];
        Costs =
        [
            .. question.Candidates.Select(c => Worth.Device + (Worth.Gram * c.Device.Mass.Value)),
            .. question.OffBoard.Select(i => Worth.Gram * i.Mass.Value),
        ];
        gains = [.. NeedsOf.Select((steps, thing) => steps.Select(s => Steps[s].Gain(Worth, ratings[thing, s])).ToArray())];
        LikeBefore = FindLikes(question);
    }

    public Worth Worth { get; }

    public Sounds Sounds { get; }

    public Step[] Steps { get; }

    /// <summary>Candidates and off-board things.</summary>
    public int Things { get; }

    /// <summary>For each thing the steps whose needs it meets better than the amp.</summary>
    public int[][] NeedsOf { get; }

    /// <summary>For each thing what taking it takes off the worth of a set.</summary>
    public long[] Costs { get; }

    /// <summary>
    /// For each thing the one before it that could change places with it in every set without changing what the set is worth or what it keeps; -1 where there is none.
    /// A set without the one need not be looked at with the other.
    /// </summary>
    public int[] LikeBefore { get; }

    /// <summary>The rating a thing meets the need of a step with; 0 where it does no better than the amp.</summary>
    public int Rating(int thing, int step) => ratings[thing, step];

    /// <summary>What a thing brings to one of its needs.</summary>
    /// <param name="place">Which of <see cref="NeedsOf"/>.</param>
    public long Gain(int thing, int place) => gains[thing][place];

    /// <summary>The worth of playing a sound that is wanted.</summary>
    public long WorthOfSound(int sound) => Sounds.All[sound].Level == NeedLevel.Must ? 0 : Sounds.All[sound].Weight * Worth.Want;

    /// <summary>The worth of the wanted sounds that no need speaks for: counted on from the start.</summary>
    public long Unhosted => Enumerable.Range(0, hosts.Length).Where(i => hosts[i] < 0).Sum(WorthOfSound);

    /// <summary>The most that wants can come to in a set of so much worth: the later tiers may take a little off.</summary>
    public long WantsWithin(long worth) => Math.Max(0, worth + Worth.Want - 1) / Worth.Want;

    /// <summary>Whether the sound must be played, or its worth was counted on by the time all needs are settled.</summary>
    public bool Counts(int sound, List<int> taken) =>
        hosts[sound] < 0 || Steps[hosts[sound]].Base > 0 || taken.Any(t => ratings[t, hosts[sound]] > 0);

    private int[] FindLikes(Question question)
    {
        var options = question.Problem.Options;
        var pinned = options.Pin.Concat(options.Fixed.Select(place => place.Id)).ToHashSet();
        var last = new Dictionary<string, int>(StringComparer.Ordinal);
        var before = new int[Things];
        for (var thing = 0; thing < Things; thing++)
        {
            before[thing] = -1;
            if (pinned.Contains(thing < question.Candidates.Length ? question.Candidates[thing].Id : question.OffBoard[thing - question.Candidates.Length].Id))
                continue;
            var sign = SignOf(question, thing);
            before[thing] = last.GetValueOrDefault(sign, -1);
            last[sign] = thing;
        }

        return before;
    }

    /// <summary>What a thing takes and what it is good for. A need that it alone can meet is told by what it is worth, any other by its place.</summary>
    private string SignOf(Question question, int thing)
    {
        var takes = thing < question.Candidates.Length
            ? $"{question.Candidates[thing].Shape.Key} {question.Candidates[thing].Consumer?.Draw} {question.Candidates[thing].Consumer?.Key} {question.Candidates[thing].Device.Mass}"
            : $"off the board {question.OffBoard[thing - question.Candidates.Length].Mass}";
        var meets = Enumerable.Range(0, Steps.Length).Where(s => ratings[thing, s] > 0).Select(s => Steps[s] is { Options.Length: 1 } own
            ? $"alone {own.IsMust} {own.Need.Weight} {own.Bonus} {own.Base} {ratings[thing, s]}"
            : $"{s} {ratings[thing, s]}").Order(StringComparer.Ordinal);
        return $"{takes}; {string.Join(", ", meets)}; {Sounds.SignOf(thing)}";
    }

    /// <summary>
    /// Musts first, then the weightiest, equal ones in the order of the things that can meet them. The weight of a wanted sound is counted with a need that is met
    /// whenever it can be played.
    /// </summary>
    private static (Step[] Steps, int[] Hosts) StepsOf(Question question, Sounds sounds)
    {
        Step[] steps =
        [
            .. question.Problem.Event.Needs.Select(need => StepOf(question, need))
                .OrderByDescending(s => s.IsMust).ThenByDescending(s => s.Need.Weight).ThenBy(s => s.Options.Select(o => o.Thing).DefaultIfEmpty(-1).Min()),
        ];
        int[] hosts = [.. sounds.All.Select(sound => sound.Level == NeedLevel.Must ? -1 : Array.FindLastIndex(steps, s => sound.Roles.Any(role => role.Meets(s.Need.Role))))];
        return ([.. steps.Select((step, s) => step with { Bonus = sounds.All.Where((_, i) => hosts[i] == s).Sum(sound => (long)sound.Weight) })], hosts);
    }

    private static Step StepOf(Question question, Need need)
    {
        var able = question.Functions.Where(f => f.Function.Role.Meets(need.Role)).Select(f => (Thing: question.ThingOf(f.Performer), f.Function.Rating)).ToArray();
        var amp = able.Where(f => f.Thing < 0).Select(f => f.Rating).DefaultIfEmpty(0).Max();
        return new(need, amp, 0, [
            .. able.Where(f => f.Thing >= 0 && f.Rating > amp).GroupBy(f => f.Thing, f => f.Rating).Select(g => new Option(g.Key, g.Max()))
                .OrderByDescending(o => o.Rating).ThenBy(o => o.Thing)]);
    }
}
