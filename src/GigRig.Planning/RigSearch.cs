using GigRig.Domain.Rigs;
using GigRig.Domain.Wishes;
using GigRig.Planning.Choosing;
using GigRig.Planning.Fitting;
using GigRig.Planning.Powering;
using GigRig.Planning.Searching;

namespace GigRig.Planning;

/// <summary>
/// Looks for the best rig: a first one quickly, then our own search through the sets and the solver's rounds, in turns, until one of them is through. Rigs found on the way are
/// reported as they come.
/// </summary>
internal sealed class RigSearch
{
    /// <summary>How many times more work our own search and the solver get with each further turn.</summary>
    private const int TimesMore = 4;
    private const int MostTimes = 1 << 14;

    /// <summary>The solver's first turn, in its own seconds of work.</summary>
    private static readonly TimeSpan SolversTurn = TimeSpan.FromSeconds(0.25);

    private readonly Question question;
    private readonly PlannerOptions options;
    private readonly Clock clock;
    private readonly RigBuilder builder;
    private readonly Findings findings;
    private readonly ChoosingRounds rounds;

    /// <summary>The most that any set could cover.</summary>
    private long wantsBound;

    /// <param name="found">Called with each better rig.</param>
    public RigSearch(Question question, PlannerOptions options, Fitter fitter, Clock clock, Action<Proposal>? found = null)
    {
        (this.question, this.options, this.clock, Fitter) = (question, options, clock, fitter);
        builder = new(question, options, clock);
        findings = new(question) { Found = found };
        rounds = new(question, options, fitter, builder, findings, clock);
        wantsBound = question.AllWants;
    }

    public Fitter Fitter { get; }

    public Proposal? Best => findings.Best;

    public Choice? BestChoice => findings.BestChoice;

    /// <summary>Whether nothing better is left, nor anything set aside that might be.</summary>
    public bool IsClosed { get; private set; }

    public long Bound => IsClosed
        ? Best?.Score.Wants ?? 0
        : Math.Min(KnownBound, Math.Max(Math.Max(Math.Min(rounds.WantsBound, wantsBound), findings.OpenWants), Best?.Score.Wants ?? 0));

    /// <summary>What was proved before.</summary>
    public long KnownBound { get; init; } = long.MaxValue;

    /// <summary>What was proved that no rig is better than.</summary>
    public Score? KnownBest { init => findings.KnownBest = value; }

    /// <summary>Whether something was set aside that more work on single questions might settle.</summary>
    public bool IsLeftOpen => !findings.LeavesNothingOpen && question.ListsEveryFeed && !clock.IsUp;

    /// <summary>Proposed already: whatever is looked for now leaves something of it at home.</summary>
    public void Exclude(Choice choice) => findings.Answered.Add(choice);

    /// <summary>A rig that is known already.</summary>
    public void Begin(Proposal proposal, Choice choice) => findings.Begin(proposal, choice);

    public void Run()
    {
        if (Best is null && findings.Answered.Count == 0)
            BeginQuickly();
        if (!IsOver)
            LookOn();
        IsClosed |= findings.IsKnownBest;
    }

    private void LookOn()
    {
        var nodes = PostureSearch.NodesFor(question, options, Fitter);
        var isThrough = nodes == 0 ? rounds.Ask(null) && rounds.IsExhausted : TakeTurns(OwnSearch(), nodes);
        IsClosed = isThrough && findings.LeavesNothingOpen;
    }

    private bool IsOver => clock.IsUp || (Best is not null && options.FirstWillDo) || findings.IsKnownBest;

    /// <summary>Where there is too much to choose from for the solver to reason with the geometry, it never was the quicker one; unless our own search knows little of the geometry either.</summary>
    private bool SolverHasTurns => question.Candidates.Length <= options.MostPlacedTogether || question.Surface.SwitchSpacing > 0;

    /// <summary>Neither our own search nor the solver is always the quicker one: each has its turn, with more work than before. True where one of them is through.</summary>
    private bool TakeTurns(PostureSearch own, int nodes)
    {
        for (var times = 1; !IsOver; times = Math.Min(TimesMore * times, MostTimes))
        {
            if (own.Run((long)nodes * times))
                return true;
            wantsBound = Math.Min(wantsBound, own.WantsBound);
            if (!IsOver && SolverHasTurns && rounds.Ask(times * SolversTurn))
                return rounds.IsExhausted;
        }

        return false;
    }

    private PostureSearch OwnSearch()
    {
        PostureSearch? search = null;
        search = new PostureSearch(question, options, Fitter, clock, (choice, shapes, wants, turned, fewer) =>
        {
            if (findings.IsAnswered(choice))
                return true;
            var isSettled = TryOut(choice, shapes, wants, turned, fewer);
            if (Best is { } better)
                search!.MustBeat(better.Score);
            return isSettled;
        })
        {
            // What was proposed may hold one of two alike things.
            KeepsLikesInOrder = findings.Answered.Count == 0,
            IsEnough = () => IsOver,
        };
        if (Best is { } known)
            search.MustBeat(known.Score);
        wantsBound = Math.Min(wantsBound, search.WantsBound);
        return search;
    }

    /// <param name="shapes">As they are to stand, in any of the ways they were narrowed to.</param>
    private bool TryOut(Choice choice, Shape[] shapes, long wants, IReadOnlyList<Stance[]>? turned, int fewer)
    {
        Consumer[] fed = [.. choice.Devices.Select(i => question.Candidates[i].Consumer).OfType<Consumer>()];
        var power = question.Power.Feed(fed, clock, options.PowerStates);
        if (power is PowerAnswer.Starved)
            return true;
        var standings = Fitter.Stand(shapes, turned, clock, fewer);
        if (standings?.Count == shapes.Length && power is PowerAnswer.Fed answer)
            findings.Accept(builder.Build(choice, Widened(choice, shapes, standings), answer.Feeds), choice);
        else if (standings is null && fewer > 1)
            return false;
        else if (standings is not { Count: 0 } || shapes.Length == 0)
            findings.SetAside(wants);
        return true;
    }

    /// <summary>The same standings, by all the poses that the things have.</summary>
    private Standing[] Widened(Choice choice, Shape[] shapes, IReadOnlyList<Standing> standings)
    {
        var full = question.ShapesOf([.. choice.Devices.Select(i => question.Candidates[i])]);
        return [.. standings.Select(s => s with { Pose = full[s.Item].PoseLike(shapes[s.Item].Poses[s.Pose]) })];
    }

    private void BeginQuickly()
    {
        foreach (var (proposal, choice) in new QuickRigs(question, builder, options, clock).All())
        {
            findings.Accept(proposal, choice);
            if (IsOver)
                return;
        }
    }
}
