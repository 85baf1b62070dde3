using GigRig.Domain.Rigs;
using GigRig.Domain.Wishes;
using GigRig.Planning.Choosing;
using GigRig.Planning.Fitting;
using GigRig.Planning.Powering;

namespace GigRig.Planning;

/// <summary>
/// The solver's way: choose, power, fit; learn from what failed; choose again. The first choice that stands and is fed is the best there is, since choosing only ever overrates.
/// </summary>
internal sealed class ChoosingRounds(Question question, PlannerOptions options, Fitter fitter, RigBuilder builder, Findings findings, Clock clock)
{
    private static readonly double[] Shares = [0.45, 0.6, 0.75, 0.85];

    /// <summary>Made when it is first asked: nothing that can do without should wait for it.</summary>
    private ChoosingModel? model;
    private int rounds;
    private Score? told;

    /// <summary>No set still to be chosen covers more weight of wants.</summary>
    public long WantsBound => model?.WantsBound ?? long.MaxValue;

    /// <summary>Whether it is proved that no better set is left, but for those set aside.</summary>
    public bool IsExhausted { get; private set; }

    private ChoosingModel Model => model ??= new(question, options.Seed, clock, findings.Answered);

    /// <summary>True where it came to an end; false where nothing was settled with so much work.</summary>
    /// <param name="work">In the solver's own seconds; null: as much as there is time for.</param>
    public bool Ask(TimeSpan? work)
    {
        if (clock.IsUp)
            return false;
        Tell();
        Model.Give(work);
        for (; !clock.IsUp && !findings.IsKnownBest && Model.HasWork; rounds++)
        {
            if (rounds >= options.RoundsBeforeGeometry && question.Candidates.Length <= options.MostPlacedTogether)
                Model.AddGeometry();
            switch (Model.Choose(clock, options.FirstWillDo))
            {
                case ChoosingAnswer.OutOfTime:
                    return false;
                case ChoosingAnswer.Exhausted:
                    IsExhausted = findings.Best is not null || Model.IsSurelyExhausted(clock, options.ConfirmBudget);
                    return true;
                case ChoosingAnswer.Chosen { Choice: var choice } chosen when TryChoice(choice):
                    IsExhausted = chosen.IsBest || options.FirstWillDo;
                    if (IsExhausted)
                        return true;
                    break;
                case ChoosingAnswer.Chosen when rounds == 0:
                    ClimbShares();
                    break;
            }
        }

        return false;
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
        {
            Accept(builder.Build(choice, placed, feeds), choice);
            return true;
        }

        var shapes = question.ShapesOf([.. choice.Devices.Select(i => question.Candidates[i])]);
        switch (fitter.Fit(shapes, clock))
        {
            case FitAnswer.Stands stands:
                Accept(builder.Build(choice, stands.Standings, feeds), choice);
                return true;
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
        findings.SetAside(Model.WantsBound);
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
        if (findings.IsAnswered(part))
            return;
        if (Feed(part.Devices) is { } feeds && builder.TryBuild(part, standings, feeds) is { } proposal)
            Accept(proposal, part);
    }

    private void Accept(Proposal proposal, Choice choice)
    {
        findings.Accept(proposal, choice);
        Tell();
    }

    /// <summary>From now on only better sets than the best known are asked for.</summary>
    private void Tell()
    {
        if (findings.Best is { Score: var best } && best != told)
            Model.MustBeat(best);
        told = findings.Best?.Score;
    }
}
