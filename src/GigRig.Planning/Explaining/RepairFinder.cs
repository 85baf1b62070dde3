using GigRig.Domain;
using GigRig.Domain.Events;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.Domain.Units;
using GigRig.Domain.Wishes;

namespace GigRig.Planning.Explaining;

/// <summary>Looks for single changes that help, cheapest first, and offers only those that a second solve confirms.</summary>
internal sealed class RepairFinder(RigProblem problem, PlannerOptions options, Clock clock)
{
    private const int MostRepairs = 4;

    private static readonly int[] Wider = [50, 100, 150, 250];

    /// <summary>Whoever has no rig at all waits longer for a way out …</summary>
    private static readonly TimeSpan EachForARig = TimeSpan.FromSeconds(3);

    /// <summary>… than whoever has one for a better one, and in all no longer than the second figure.</summary>
    private static readonly TimeSpan EachForMore = TimeSpan.FromSeconds(1);
    private static readonly TimeSpan AllForMore = TimeSpan.FromSeconds(2);

    /// <summary>What would make an impossible problem possible.</summary>
    public ValueList<Repair> For(ValueList<ConflictPart> conflict)
    {
        var facts = Facts.Of(problem).Where(f => f.Change is not null && conflict.Any(c => c.RuleId == f.RuleId && c.Sentence == f.Sentence));
        var lifts = facts.Select(f => new Trial($"lift-{f.RuleId}", f.Change!, f.Lift(problem.Draft)));
        var rules = conflict.Select(c => c.RuleId).ToHashSet(StringComparer.Ordinal);
        return Confirmed([lifts.Reverse(), rules.Contains(RuleIds.DevicesFed) ? [Outlet()] : [], rules.Contains(RuleIds.InsideBoard) ? Boards() : []], _ => true, clock, EachForARig);
    }

    /// <summary>What would cover more of the wants.</summary>
    public ValueList<Repair> For(Proposal best)
    {
        if (best.Coverage.Needs.All(n => n.Cover is not null) && best.Coverage.Sounds.All(s => s.Covers is not null))
            return [];
        var allow = Facts.Of(problem).Where(f => f.RuleId is RuleIds.Bans or RuleIds.MassLimit or RuleIds.DeviceLimit or RuleIds.FreeArea).Select(f => new Trial($"lift-{f.RuleId}", f.Change!, f.Lift(problem.Draft)));
        return Confirmed([allow, problem.Supply is null ? [] : [Outlet()], Boards()], score => score.Wants > best.Score.Wants, clock.Within(AllForMore), EachForMore);
    }

    /// <summary>The changes that a solve confirms; of several sizes of one change, the smallest.</summary>
    private ValueList<Repair> Confirmed(IEnumerable<IEnumerable<Trial>> kinds, Func<Score, bool> helps, Clock time, TimeSpan each)
    {
        var ask = new AskAgain(options, time, each);
        var repairs = new List<Repair>();
        foreach (var trial in kinds.SelectMany(k => k))
        {
            if (repairs.Count == MostRepairs || time.IsUp)
                break;
            if (repairs.All(r => r.Kind != trial.Kind || trial.Kind.StartsWith("lift-", StringComparison.Ordinal))
                && ask.Best(trial.Draft) is { } better && helps(better.Score))
            {
                repairs.Add(new(trial.Kind, $"{trial.Sentence} {Gain(better)}", better.Score, trial.Draft));
            }
        }

        return repairs.ToValueList();
    }

    private Trial Outlet()
    {
        var more = new Outlet("one more", [9.V], 500.MilliA);
        var supply = problem.Supply ?? new Supply(new("one more supply"), "one more supply", Grams.Zero, SupplyMount.Off, null, []);
        return new(
            "one-more-outlet",
            "Add an isolated 9 V outlet of 500 mA.",
            problem.Draft with { Supply = supply with { Outlets = supply.Outlets.Append(more).ToValueList(), TotalCurrent = supply.TotalCurrent is { } total ? total + more.Current : null } });
    }

    private IEnumerable<Trial> Boards() => Wider.Select(by => new Trial(
        "wider-board",
        $"Take a board {by.Mm} wider than {problem.Board.Name}.",
        problem.Draft with { Board = problem.Board with { Width = problem.Board.Width + by.Mm } }));

    private static string Gain(Proposal better)
    {
        var missing = better.Coverage.Needs.Count(n => n.Cover is null && n.Need.Level == NeedLevel.Want) + better.Coverage.Sounds.Count(s => s.Covers is null && s.Sound.Level == NeedLevel.Want);
        return missing switch { 0 => "Then everything is covered.", 1 => "Then one want stays uncovered.", _ => $"Then {missing} wants stay uncovered." };
    }

    private sealed record Trial(string Kind, Phrase Sentence, RigProblemDraft Draft);
}
