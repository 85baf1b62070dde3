using GigRig.Domain;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.Domain.Wishes;

namespace GigRig.Benchmarks.Contenders;

/// <summary>How an ask ended.</summary>
internal enum AnswerKind
{
    /// <summary>Time ran out.</summary>
    Open,

    /// <summary>A rig that is proved best on the first four tiers.</summary>
    Proved,

    /// <summary>Proved that there is none.</summary>
    Impossible,
}

/// <summary>What a contender says and, once judged, what the rule book says of it.</summary>
/// <param name="Score">Counted from the rig, not taken from the contender.</param>
/// <param name="BrokenRules">Ids of the rules that the rig breaks.</param>
internal sealed record Answer(AnswerKind Kind, Rig? Rig = null, Score? Score = null, ValueList<string> BrokenRules = default)
{
    public bool IsClosed => Kind != AnswerKind.Open;

    /// <summary>Apart from the answering, so that it is not timed.</summary>
    public Answer Judged(RigProblem problem) => Rig is null ? this : this with
    {
        Score = Scorer.Score(problem, Rig),
        BrokenRules = RuleBook.Check(problem, Rig).Select(v => v.RuleId).Distinct().ToValueList(),
    };
}
