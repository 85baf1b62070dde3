using System.CommandLine;
using GigRig.Benchmarks.Contenders;
using GigRig.Benchmarks.Problems;
using GigRig.Benchmarks.Reporting;

namespace GigRig.Benchmarks.Commands;

/// <summary><c>compare</c>: ours and its opponents in turn on each problem, in this process, with the ratios of their times.</summary>
internal static class CompareCommand
{
    private static readonly Argument<FileInfo[]> Files = Options.Files();

    private static readonly LibraryOptions Library = new("--generated");

    private static readonly Option<Opponents> Against = new("--against") { Description = "Whom to compare with", DefaultValueFactory = _ => Opponents.Both };

    private static readonly Option<double?> Limit = Options.Limit("Seconds for each contender and problem (default 20).");

    private enum Opponents
    {
        Both,
        Textbook,
        Best,
        Nobody,
    }

    public static Command Create()
    {
        var command = new Command("compare", "Run ours and one-model opponents on each problem and print the ratios.") { Files, Against, Limit };
        Library.AddTo(command);
        command.AskForOne(Files, Library.Devices);
        command.SetAction(Run);
        return command;
    }

    private static int Run(ParseResult asked)
    {
        Contender[] contenders =
        [
            Contender.Ours,
            .. asked.GetValue(Against) switch
            {
                Opponents.Both => new[] { Contender.Textbook, Contender.Best },
                Opponents.Textbook => [Contender.Textbook],
                Opponents.Best => [Contender.Best],
                _ => [],
            },
        ];
        var limit = Options.Seconds(asked.GetValue(Limit)) ?? TimeSpan.FromSeconds(20);
        var (refused, table) = (0, new ComparedTable(Console.Out, contenders, limit));
        WarmUp.Run(contenders);
        table.PrintHead();
        foreach (var problem in Problems(asked, () => refused++))
        {
            var timed = problem.Within(limit);
            table.Print(new(timed, limit, [.. contenders.Select(c => ComparedRun.Of(c, timed.Problem))]));
        }

        table.PrintSums();
        return refused > 0 || table.HasFaults ? 1 : 0;
    }

    private static IEnumerable<NamedProblem> Problems(ParseResult asked, Action refused)
    {
        if (Library.AreGivenIn(asked))
        {
            foreach (var problem in Library.Of(asked).All())
                yield return problem;
            yield break;
        }

        foreach (var file in asked.GetValue(Files)!)
        {
            var (problem, complaints) = ProblemFiles.Read(file);
            if (problem is not null)
            {
                yield return problem;
                continue;
            }

            Console.Error.WriteLine($"{file.Name} is refused: {string.Join(" ", complaints.Select(c => $"{c.Path}: {c.Message}"))}");
            refused();
        }
    }
}
