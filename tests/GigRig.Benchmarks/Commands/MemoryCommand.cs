using System.CommandLine;
using System.Text.Json;
using GigRig.Benchmarks.Contenders;
using GigRig.Benchmarks.Problems;
using GigRig.Domain;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.Planning;

namespace GigRig.Benchmarks.Commands;

/// <summary><c>memory</c>: asks one planner that remembers again and again, a little differently each time, and prints what the process holds.</summary>
internal static class MemoryCommand
{
    private const int Rows = 20;

    private static readonly TimeSpan Limit = TimeSpan.FromSeconds(2);

    private static readonly LibraryOptions Library = new("--generated");

    private static readonly Option<int> Asks = Options.Number("--asks", "How often to ask", Rows, 100_000, 200);

    public static Command Create()
    {
        var command = new Command("memory", "Ask one planner with a memory many varied questions and print what the process holds after each twentieth part of them.") { Asks };
        Library.AddTo(command);
        command.SetAction(Run);
        return command;
    }

    private static int Run(ParseResult asked)
    {
        WarmUp.Run([Contender.Ours]);
        NamedProblem[] libraries = [.. Library.Of(asked).All()];
        var (asks, random, planner) = (asked.GetValue(Asks), new Random(asked.GetValue(Library.Seed)), new RigPlanner(new PlanMemory()));
        for (var ask = 1; ask <= asks; ask++)
        {
            var problem = Varied(libraries[random.Next(libraries.Length)].Within(Limit, arrange: true).Problem, random);
            planner.PlanAsync(problem).GetAwaiter().GetResult();
            if (ask % Math.Max(1, asks / Rows) != 0)
                continue;
            GC.Collect();
            GC.WaitForPendingFinalizers();
            GC.Collect();
            Console.WriteLine(JsonSerializer.Serialize(new { asks = ask, managedKb = GC.GetTotalMemory(forceFullCollection: true) >> 10, workingSetMb = Environment.WorkingSet >> 20 }));
        }

        return 0;
    }

    /// <summary>Another night with the same gear: other weights, a pin and a ban, a board a little longer or shorter.</summary>
    private static RigProblem Varied(RigProblem problem, Random random)
    {
        var draft = problem.Draft;
        var needs = draft.Event.Needs.Select(n => n with { Weight = 1 + random.Next(30) }).ToValueList();
        var (pin, ban) = (draft.Devices[random.Next(draft.Devices.Count)].Id, draft.Devices[random.Next(draft.Devices.Count)].Id);
        return NamedProblem.Of("varied", draft with
        {
            Event = draft.Event with { Needs = needs },
            Board = draft.Board with { Width = (draft.Board.Width.Value - random.Next(60)).Mm },
            Options = draft.Options with { Pin = [pin], Ban = pin == ban ? [] : [ban] },
        }).Problem;
    }
}
