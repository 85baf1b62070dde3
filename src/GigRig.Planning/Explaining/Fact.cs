using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;

namespace GigRig.Planning.Explaining;

/// <summary>One thing that was asked or is so, that can be lifted from a problem to see what happens without it.</summary>
/// <param name="RuleId">The rule it works through.</param>
/// <param name="Sentence">The fact, for the musician.</param>
/// <param name="Change">What lifting it would mean, for the musician; null where nobody can do that.</param>
internal sealed record Fact(string RuleId, ValueList<GearId> Culprits, Phrase Sentence, string? Change, Func<RigProblemDraft, RigProblemDraft> Lift)
{
    public ConflictPart AsPart() => new(RuleId, Culprits, Sentence);
}
