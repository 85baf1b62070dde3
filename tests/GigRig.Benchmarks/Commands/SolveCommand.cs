using System.CommandLine;
using GigRig.Benchmarks.Contenders;
using GigRig.Benchmarks.Measuring;
using GigRig.Benchmarks.Problems;
using GigRig.Benchmarks.Reporting;
using GigRig.Domain.Rigs;
using GigRig.Planning;

namespace GigRig.Benchmarks.Commands;

/// <summary><c>solve</c>: plans each problem and prints a line of JSON about it.</summary>
internal static class SolveCommand
{
    private static readonly TimeSpan PublishedLimit = TimeSpan.FromSeconds(60);

    private static readonly Argument<FileInfo[]> Files = Options.Files();

    private static readonly Option<string[]> Published = new("--published")
    {
        Description = "Solve published instances instead of files: all of them, or those with these names (okp1, 'ngcut*').",
        Arity = ArgumentArity.ZeroOrMore,
        AllowMultipleArgumentsPerToken = true,
    };

    private static readonly Option<bool> Arrange = new("--arrange") { Description = "Also shorten the leads and look for reasons and repairs." };

    private static readonly Option<double?> Limit = Options.Limit("Seconds for each problem (default: the file's own timeLimit; 60 for published instances).");

    public static Command Create()
    {
        var command = new Command("solve", "Plan each rig-problem/1 file and print one line of JSON a problem.") { Files, Published, Arrange, Limit };
        command.AskForOne(Files, Published);
        command.SetAction(Run);
        return command;
    }

    private static int Run(ParseResult asked)
    {
        var (good, arrange, limit) = (true, asked.GetValue(Arrange), Options.Seconds(asked.GetValue(Limit)));
        WarmUp.Run([Contender.Ours]);
        if (asked.GetResult(Published) is not null)
        {
            var problems = PublishedProblems.Matching(asked.GetValue(Published) ?? []).ToList();
            if (problems.Count > 0)
                return Summed([.. problems.Select(p => Solve(p, limit ?? PublishedLimit, arrange))]);
            Console.Error.WriteLine($"No published instance has such a name. There are: {string.Join(", ", PublishedProblems.Names)}.");
            return 1;
        }

        foreach (var file in asked.GetValue(Files)!)
        {
            var (problem, complaints) = ProblemFiles.Read(file);
            if (problem is not null)
                Solve(problem, limit ?? problem.Problem.Options.TimeLimit, arrange);
            else
                Console.WriteLine(SolveLine.Refused(file.Name, complaints));
            good &= problem is not null;
        }

        return good ? 0 : 1;
    }

    private static SolveLine Solve(NamedProblem asked, TimeSpan limit, bool arrange)
    {
        var problem = asked.Within(limit, arrange).Problem;
        var options = PlannerOptions.Default with { Explain = arrange };
        var line = SolveLine.Of(asked, Measured<PlanOutcome>.Of(() => new RigPlanner().PlanAsync(problem, options).GetAwaiter().GetResult()));
        Console.WriteLine(line.ToJson());
        return line;
    }

    private static int Summed(IReadOnlyList<SolveLine> lines)
    {
        Console.Error.WriteLine($"{lines.Count(l => l.Reached == true)} of {lines.Count} reached the published answer, {lines.Count(l => l.Contradicts)} contradict it; {lines.Sum(l => l.ElapsedMs) / 1000:0.0} s in all, {lines.Max(l => l.ElapsedMs) / 1000:0.0} s the longest");
        return lines.Any(l => l.Contradicts) ? 1 : 0;
    }
}
