using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.Domain.Units;
using GigRig.Domain.Wiring;
using GigRig.Domain.Wishes;
using GigRig.Planning.Choosing;
using GigRig.Planning.Fitting;
using GigRig.Planning.Powering;

namespace GigRig.Planning;

/// <summary>Makes a rig of what the searches found, and has the rule book judge it before anyone sees it.</summary>
internal sealed class RigBuilder(Question question, PlannerOptions options, Clock clock)
{
    private readonly PluggedBefore before = new(options.Memory?.LastHookUp ?? []);

    /// <summary>As <see cref="Judge"/>.</summary>
    public Proposal Build(Choice choice, IReadOnlyList<Standing> standings, IReadOnlyList<Feed> feeds) => Judge(RigOf(choice, standings, feeds));

    /// <summary>Throws where a rule is broken: then a search is at fault, not the musician.</summary>
    public Proposal Judge(Rig rig)
    {
        var violations = RuleBook.Check(question.Problem, rig);
        if (violations.Count > 0)
            throw new InvalidOperationException($"The planner broke its own rules: {string.Join(" ", violations.Select(v => $"[{v.RuleId}] {v.Sentence}"))}");
        return Judged(rig);
    }

    /// <summary>Null where a rule is broken.</summary>
    public Proposal? TryBuild(Choice choice, IReadOnlyList<Standing> standings, IReadOnlyList<Feed> feeds) => TryJudge(RigOf(choice, standings, feeds));

    /// <summary>Null where a rule is broken.</summary>
    public Proposal? TryJudge(Rig rig) => RuleBook.Check(question.Problem, rig).Count == 0 ? Judged(rig) : null;

    private Proposal Judged(Rig rig) => new(rig, Scorer.Score(question.Problem, rig), Coverage.Of(question.Problem, rig));

    /// <summary>Not judged yet.</summary>
    public Rig RigOf(Choice choice, IReadOnlyList<Standing> standings, IReadOnlyList<Feed> feeds)
    {
        var placements = standings.Where(s => s.Item < choice.Devices.Count)
            .Select(s => PlacementOf(question.Candidates[choice.Devices[s.Item]], s))
            .ToValueList();
        return new(
            placements,
            standings.Where(s => s.Item == choice.Devices.Count).Select(SupplyPlacement).SingleOrDefault(),
            choice.OffBoard.Select(i => question.OffBoard[i].Id).ToValueList(),
            Plugged(placements.Select(p => p.Id), feeds),
            ChainOrder.Order(question.Problem, placements.Select(p => p.Id)));
    }

    /// <summary>The searches ask only whether all can be fed; plugged in it is with as few leads as can be.</summary>
    public ValueList<Feed> Plugged(IEnumerable<GearId> devices, IReadOnlyList<Feed> feeds)
    {
        var fed = devices.ToHashSet();
        return question.Power.WithFewestLeads([.. question.Candidates.Where(c => fed.Contains(c.Id)).Select(c => c.Consumer).OfType<Consumer>()], feeds, before, clock).ToValueList();
    }

    private static Placement PlacementOf(Candidate candidate, Standing standing) =>
        new(candidate.Id, new Point(standing.X.Mm, standing.Y.Mm), candidate.Shape.Poses[standing.Pose].Turn);

    private Placement SupplyPlacement(Standing standing) =>
        new(question.Problem.Supply!.Id, new Point(standing.X.Mm, standing.Y.Mm), question.SupplyShape!.Poses[standing.Pose].Turn);
}
