using GigRig.Benchmarks.Problems;

namespace GigRig.Benchmarks.Contenders;

/// <summary>Loads the solver and has the code compiled before anything is timed.</summary>
internal static class WarmUp
{
    private static readonly TimeSpan Limit = TimeSpan.FromSeconds(5);

    public static void Run(IEnumerable<Contender> contenders)
    {
        foreach (var problem in new GeneratedProblems(Devices: 10, new BoardSize(300, 140), FirstSeed: 0, Count: 2).All())
        {
            foreach (var contender in contenders)
                contender.Solve(problem.Within(Limit).Problem);
        }
    }
}
