using GigRig.Domain.Rigs;

namespace GigRig.TestKit.Judging;

/// <summary>
/// Judges a rig a second time, in the plainest way: millimetre by millimetre, outlet by outlet, role by role. Shares nothing with the rule book but the question
/// and the rig, so that a mistake in one of them shows.
/// </summary>
public static class NaiveRigChecker
{
    public static IReadOnlyList<Fault> Faults(RigProblem problem, Rig rig) =>
        [.. NaiveBelongings.Faults(problem, rig), .. NaiveGround.Faults(problem, rig), .. NaivePower.Faults(problem, rig), .. NaiveMusic.Faults(problem, rig)];

    /// <summary>The rules that are broken, by id, in order.</summary>
    public static IReadOnlyList<string> BrokenRules(RigProblem problem, Rig rig) =>
        [.. Faults(problem, rig).Select(fault => fault.Rule).Distinct().Order(StringComparer.Ordinal)];
}
