using System.CommandLine;
using GigRig.Benchmarks.Contenders;
using GigRig.Benchmarks.Measuring;
using GigRig.Benchmarks.Problems;
using GigRig.Benchmarks.Reporting;

namespace GigRig.Benchmarks.Commands;

/// <summary><c>stop</c>: calls the planner off at random moments and prints how long it takes to answer then.</summary>
internal static class StopCommand
{
    private static readonly Option<string[]> Published = new("--published")
    {
        Description = "Published instances to ask, by name (okp1, 'ngcut*').",
        Arity = ArgumentArity.ZeroOrMore,
        AllowMultipleArgumentsPerToken = true,
    };

    private static readonly LibraryOptions Library = new("--generated");

    private static readonly Option<int> Times = Options.Number("--times", "How often each problem is asked and called off", 1, 1000, 5);

    private static readonly Option<double?> Within = Options.Limit("The last moment to call off, in seconds (default 6).");

    private static readonly TimeSpan Longer = TimeSpan.FromSeconds(1);

    public static Command Create()
    {
        var command = new Command("stop", "Call the planner off at random moments and print one line of JSON each time, with how long the answer took from then.") { Published, Times, Within };
        Library.AddTo(command);
        command.SetAction(Run);
        return command;
    }

    private static int Run(ParseResult asked)
    {
        var within = Options.Seconds(asked.GetValue(Within)) ?? TimeSpan.FromSeconds(6);
        var random = new Random(asked.GetValue(Library.Seed));
        WarmUp.Run([Contender.Ours]);
        NamedProblem[] problems =
        [
            .. Library.AreGivenIn(asked) ? Library.Of(asked).All() : [],
            .. asked.GetResult(Published) is null ? [] : PublishedProblems.Matching(asked.GetValue(Published) ?? []),
        ];
        var lines = new List<StopLine>();
        foreach (var problem in problems)
        {
            // The time limit lies a little behind the last moment: it is called off in every part of its work, and never out of time.
            var timed = problem.Within(within + Longer, arrange: true);
            for (var time = 0; time < asked.GetValue(Times); time++)
            {
                // Every second one rather early than late: much begins then, and models are built.
                var moment = Math.Pow(random.NextDouble(), time % 2 == 0 ? 1 : 3) * within;
                lines.Add(StopLine.Of(timed, Stopped.After(timed.Problem, moment)));
                Console.WriteLine(lines[^1].ToJson());
            }
        }

        if (lines.Count == 0)
        {
            Console.Error.WriteLine("stop takes --generated N, --published NAME… or both.");
            return 1;
        }

        Console.Error.WriteLine(StopLine.Sum(lines));
        return lines.Any(l => l.IsFault) ? 1 : 0;
    }
}
