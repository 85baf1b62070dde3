using GigRig.Domain.Gear;
using GigRig.Domain.Units;
using GigRig.Domain.Wishes;

namespace GigRig.Domain.Rigs;

/// <summary>A rule-clean rig with its recomputed score and who covers what.</summary>
public sealed record Proposal(Rig Rig, Score Score, Coverage Coverage);

/// <summary>One member of a smallest set of things that cannot hold together.</summary>
/// <param name="RuleId">The rule it comes from, as in <c>docs/rules.md</c>.</param>
public sealed record ConflictPart(string RuleId, ValueList<GearId> Culprits, Phrase Sentence);

/// <summary>A single change that helps, checked by solving again.</summary>
/// <param name="Kind">Stable kebab-case word, such as <c>drop-must</c>.</param>
/// <param name="Sentence">What to change and what it brings.</param>
/// <param name="Score">What the changed problem scores.</param>
/// <param name="Changed">The problem with the change made, to ask it as if it were so.</param>
public sealed record Repair(string Kind, Phrase Sentence, Score Score, RigProblemDraft Changed);

/// <summary>How a search is getting on. <paramref name="Best"/> is rule-clean where it is there.</summary>
/// <param name="Bound">Proved upper bound on the weight of covered wants.</param>
public sealed record PlanProgress(Proposal? Best, long Bound, TimeSpan Elapsed);

/// <summary>The planner's three-way answer.</summary>
public abstract record PlanOutcome
{
    private PlanOutcome(TimeSpan elapsed) => Elapsed = elapsed;

    public TimeSpan Elapsed { get; init; }

    /// <summary>A rig that keeps every rule.</summary>
    /// <param name="Proven">Whether it is proved best on wants, rating, devices and mass.</param>
    /// <param name="Bound">Proved upper bound on the weight of covered wants.</param>
    public sealed record Proposed(Proposal Best, bool Proven, long Bound, ValueList<Proposal> Alternatives, ValueList<Repair> Repairs, TimeSpan Elapsed)
        : PlanOutcome(Elapsed);

    /// <summary>Proved: no set of owned things meets the musts. Cannot be made without a reason.</summary>
    public sealed record Impossible : PlanOutcome
    {
        public Impossible(ValueList<ConflictPart> conflict, ValueList<Repair> repairs, TimeSpan elapsed)
            : base(elapsed)
        {
            if (conflict.Count == 0)
                throw new ArgumentException("Impossible needs a reason.", nameof(conflict));
            Conflict = conflict;
            Repairs = repairs;
        }

        public ValueList<ConflictPart> Conflict { get; }

        public ValueList<Repair> Repairs { get; }
    }

    /// <summary>Time ran out, or the search was stopped, before a rig was found or proved not to exist.</summary>
    public sealed record Undecided(long Bound, TimeSpan Elapsed) : PlanOutcome(Elapsed);
}
