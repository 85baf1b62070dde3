using GigRig.Domain.Rigs;
using GigRig.Planning.Choosing;
using GigRig.Planning.Fitting;
using GigRig.Planning.Powering;
using GigRig.Planning.Searching;

namespace GigRig.Planning;

/// <summary>
/// Choose, power, fit; learn from what failed; choose again. The first choice that stands and is fed is the best there is, since choosing only ever
/// overrates. Rigs found on the way are reported as they come.
/// </summary>
internal sealed class RigSearch(Question question, PlannerOptions options, Fitter fitter, Clock clock)
{
    private static readonly double[] Shares = [0.45, 0.6, 0.75, 0.85];

    /// <summary>What our own search may take of the time; the solver has the rest.</summary>
    private const double SearchShare = 0.6;

    private readonly RigBuilder builder = new(question, options, clock);
    private readonly List<Choice> answered = [];
    private ChoosingModel? model;

    /// <summary>The most that any set could cover.</summary>
    private long wantsBound = question.AllWants;

    /// <summary>The most that sets of unknown standing could cover; they were set aside, not ruled out.</summary>
    private long openWants = question.ListsEveryFeed ? -1 : question.AllWants;

    public Fitter Fitter => fitter;

    /// <summary>Made when it is first asked: a first rig should not wait for it.</summary>
    private ChoosingModel Model => model ??= new(question, options.Seed, clock, answered);

    public Proposal? Best { get; private set; }

    /// <summary>Whether nothing better is left, nor anything set aside that might be.</summary>
    public bool IsClosed { get; private set; }

    public long Bound => IsClosed ? Best?.Score.Wants ?? 0 : Math.Min(KnownBound, Math.Max(Math.Max(Math.Min(model?.WantsBound ?? wantsBound, wantsBound), openWants), Best?.Score.Wants ?? 0));

    /// <summary>What was proved before.</summary>
    public long KnownBound { get; init; } = long.MaxValue;

    /// <summary>Called with each better rig.</summary>
    public Action<Proposal>? Found { get; init; }

    /// <summary>
    /// Proposed already: whatever is looked for now leaves something of it at home. Otherwise the same with something useless beside would come next.
    /// </summary>
    public void Exclude(Choice choice) => answered.Add(choice);

    public Choice? BestChoice { get; private set; }

    /// <summary>Whether something was set aside that more work on single questions might settle.</summary>
    public bool IsLeftOpen => openWants >= 0 && question.ListsEveryFeed && !clock.IsUp;

    /// <summary>A rig that is known already.</summary>
    public void Begin(Proposal proposal, Choice choice)
    {
        Best = proposal;
        BestChoice = choice;
    }

    public void Run()
    {
        if (Best is null && answered.Count == 0)
            BeginQuickly();
        if (IsOver)
            return;
        if (SearchSets())
            IsClosed = openWants < 0;
        else if (!IsOver)
            AskTheModel();
    }

    private bool IsOver => clock.IsUp || (Best is not null && options.FirstWillDo);

    /// <summary>Our own search through the sets; false where it did not get to the end.</summary>
    private bool SearchSets()
    {
        var within = clock.Within(SearchShare * clock.Left);
        SetSearch? search = null;
        var parts = new Parts(question, options, fitter, within);
        var nodes = SetSearch.NodesFor(question, options, parts.AreRows);
        if (nodes == 0)
            return false;
        search = new SetSearch(question, fitter.Turning, nodes, within, parts.MayDo, (choice, wants) =>
        {
            if (answered.Any(choice.Holds))
                return;
            TryOut(choice, wants, parts.TurnedOf(choice.Devices));
            if (Best is { } better)
                search!.MustBeat(better.Score);
        })
        {
            // What was proposed may hold one of two alike things.
            KeepsLikesInOrder = answered.Count == 0,
            IsEnough = () => IsOver,
        };
        if (Best is { } known)
            search.MustBeat(known.Score);
        wantsBound = Math.Min(wantsBound, search.WantsBound);
        return search.Run();
    }

    private void TryOut(Choice choice, long wants, IReadOnlyList<Stance[]>? turned)
    {
        Consumer[] fed = [.. choice.Devices.Select(i => question.Candidates[i].Consumer).OfType<Consumer>()];
        var power = question.Power.Feed(fed, clock, options.PowerStates);
        if (power is PowerAnswer.Starved)
            return;
        var shapes = question.ShapesOf([.. choice.Devices.Select(i => question.Candidates[i])]);
        var standings = fitter.Stand(shapes, turned, clock);
        if (standings?.Count == shapes.Length && power is PowerAnswer.Fed answer)
            Accept(builder.Build(choice, standings, answer.Feeds), choice);
        else if (standings is not { Count: 0 } || shapes.Length == 0)
            openWants = Math.Max(openWants, wants);
    }

    private void AskTheModel()
    {
        if (clock.IsUp)
            return;
        if (Best is { } known)
            Model.MustBeat(known.Score);
        for (var round = 0; !clock.IsUp; round++)
        {
            if (round == options.RoundsBeforeGeometry && question.Candidates.Length <= options.MostPlacedTogether)
                Model.AddGeometry();
            switch (Model.Choose(clock, options.FirstWillDo))
            {
                case ChoosingAnswer.OutOfTime:
                    return;
                case ChoosingAnswer.Exhausted:
                    IsClosed = openWants < 0 && (Best is not null || Model.IsSurelyExhausted(clock, options.ConfirmBudget));
                    return;
                case ChoosingAnswer.Chosen { Choice: var choice } chosen when TryChoice(choice):
                    if (chosen.IsBest || options.FirstWillDo)
                    {
                        IsClosed = openWants < 0;
                        return;
                    }

                    break;
                case ChoosingAnswer.Chosen when round == 0:
                    ClimbShares();
                    break;
            }
        }
    }

    private void BeginQuickly()
    {
        foreach (var (proposal, choice) in new QuickRigs(question, builder, options, clock).All().TakeWhile(_ => Best is null || !options.FirstWillDo))
            Accept(proposal, choice);
    }

    /// <summary>Where the best set on paper does not stand, ever fuller boards give a rig to show and to beat.</summary>
    private void ClimbShares()
    {
        foreach (var share in Shares)
        {
            if (Model.ChooseWithin(share, clock) is ChoosingAnswer.Chosen { Choice: var choice } && !TryChoice(choice))
                return;
        }
    }

    /// <summary>True where the whole choice works out; otherwise the model has learned why not.</summary>
    private bool TryChoice(Choice choice)
    {
        if (Feed(choice.Devices) is not { } feeds)
            return false;
        if (choice.Standings is { } placed)
            return Accept(builder.Build(choice, placed, feeds), choice);
        var shapes = question.ShapesOf([.. choice.Devices.Select(i => question.Candidates[i])]);
        switch (fitter.Fit(shapes, clock))
        {
            case FitAnswer.Stands stands:
                return Accept(builder.Build(choice, stands.Standings, feeds), choice);
            case FitAnswer.Misfit misfit:
                TryPartOf(choice, shapes);
                int[] devices = [.. misfit.Items.Where(i => i < choice.Devices.Count).Select(i => choice.Devices[i])];
                if (misfit.RowExcess is { } excess)
                    Model.NoGoods.ForbidRow(devices, fitter.Rows, excess);
                else
                    Model.NoGoods.ForbidMisfit(devices);
                return false;
            default:
                TryPartOf(choice, shapes);
                SetAside(choice.Devices);
                return false;
        }
    }

    /// <summary>Neither ruled out nor asked about again; from now on nothing is proved that this set could overthrow.</summary>
    private void SetAside(IReadOnlyList<int> devices)
    {
        openWants = Math.Max(openWants, Model.WantsBound);
        Model.NoGoods.ForbidOnly(devices);
    }

    private IReadOnlyList<Feed>? Feed(IReadOnlyList<int> devices)
    {
        var fed = devices.Where(i => question.Candidates[i].Consumer is not null).ToArray();
        switch (question.Power.Feed([.. fed.Select(i => question.Candidates[i].Consumer!)], clock, options.PowerStates))
        {
            case PowerAnswer.Fed answer:
                return answer.Feeds;
            case PowerAnswer.Starved starved:
                Model.NoGoods.ForbidStarved([.. starved.Consumers.Select(c => fed[c])]);
                return null;
            default:
                SetAside(devices);
                return null;
        }
    }

    /// <summary>As much of a choice as the quick placer gets onto the board is often a rig already.</summary>
    private void TryPartOf(Choice choice, IReadOnlyList<Shape> shapes)
    {
        var layout = fitter.Quick.Best(shapes, options.QuickTries / 3, clock.Cancel);
        var placed = layout.Standings.Where(s => s.Item < choice.Devices.Count).OrderBy(s => s.Item).ToArray();
        var part = choice with { Devices = [.. placed.Select(s => choice.Devices[s.Item])], Standings = null };
        var standings = placed.Select((s, position) => s with { Item = position })
            .Concat(layout.Standings.Where(s => s.Item == choice.Devices.Count).Select(s => s with { Item = placed.Length }))
            .ToArray();
        if (answered.Any(part.Holds))
            return;
        if (Feed(part.Devices) is { } feeds && builder.TryBuild(part, standings, feeds) is { } proposal)
            Accept(proposal, part);
    }

    private bool Accept(Proposal proposal, Choice choice)
    {
        if (Best is not null && proposal.Score.CompareChoice(Best.Score) <= 0)
            return true;
        Best = proposal;
        BestChoice = choice;
        model?.MustBeat(proposal.Score);
        Found?.Invoke(proposal);
        return true;
    }
}
