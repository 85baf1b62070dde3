using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;

namespace GigRig.Domain.Rules;

/// <summary>A broken rule.</summary>
/// <param name="RuleId">Stable kebab-case id, a row of <c>docs/rules.md</c>.</param>
/// <param name="Culprits">The things at fault; may be empty where a limit of the event is broken as a whole.</param>
/// <param name="Amount">By how much, with its unit, always the metric one, such as <c>14 mm</c>; empty where a thing is simply missing.</param>
/// <param name="Sentence">For the musician: names, values, limit.</param>
public sealed record Violation(string RuleId, ValueList<GearId> Culprits, string Amount, Phrase Sentence);

/// <summary>One thing that must hold for a rig to be built and played. One class, one file, one test file, one row in docs/rules.md.</summary>
public interface IRule
{
    string Id { get; }

    /// <summary>What must hold, in one sentence for the musician.</summary>
    string Sentence { get; }

    IEnumerable<Violation> Check(RigProblem problem, Rig rig);
}
