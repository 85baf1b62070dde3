using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;

namespace GigRig.Domain.Tests.Rules;

/// <summary>Asks one rule of the rule book alone.</summary>
internal static class Judge
{
    public static void Passes(string ruleId, RigProblem problem, Rig rig) => Assert.Empty(Ask(ruleId, problem, rig));

    /// <summary>The one violation found.</summary>
    public static Violation Fails(string ruleId, RigProblem problem, Rig rig) => Assert.Single(Ask(ruleId, problem, rig));

    /// <summary>Asserts one violation with this amount and sentence, and with these culprits, blank-separated.</summary>
    public static void Fails(string ruleId, RigProblem problem, Rig rig, string culprits, string amount, string sentence)
    {
        var violation = Fails(ruleId, problem, rig);
        Assert.Equal(sentence, violation.Sentence.ToString());
        Assert.Equal((culprits, amount, ruleId), (string.Join(' ', violation.Culprits), violation.Amount, violation.RuleId));
    }

    public static IReadOnlyList<Violation> Ask(string ruleId, RigProblem problem, Rig rig) =>
        [.. RuleBook.Rules.Single(rule => rule.Id == ruleId).Check(problem, rig)];
}
