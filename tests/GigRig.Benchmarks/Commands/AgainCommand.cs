using System.CommandLine;
using System.Text.Json;
using GigRig.Benchmarks.Contenders;
using GigRig.Benchmarks.Measuring;
using GigRig.Benchmarks.Problems;
using GigRig.Domain.Rigs;
using GigRig.Planning;

namespace GigRig.Benchmarks.Commands;

/// <summary><c>again</c>: asks about a library, then with a thing of the answer pinned, then with one banned, then with another thing pinned; by a planner that remembers, and by one that does not.</summary>
internal static class AgainCommand
{
    private static readonly LibraryOptions Library = new("--generated");

    private static readonly Option<double?> Limit = Options.Limit("Seconds for each question (default 20).");

    public static Command Create()
    {
        var command = new Command("again", "Ask a second and a third time with a little changed, and print how long that took with and without a memory.") { Limit };
        Library.AddTo(command);
        command.SetAction(Run);
        return command;
    }

    private static int Run(ParseResult asked)
    {
        WarmUp.Run([Contender.Ours]);
        var (limit, random) = (Options.Seconds(asked.GetValue(Limit)) ?? TimeSpan.FromSeconds(20), new Random(asked.GetValue(Library.Seed)));
        var lines = new List<AgainLine>();
        foreach (var problem in Library.Of(asked).All())
        {
            var (planner, options) = (new RigPlanner(new PlanMemory()), problem.Problem.Options);
            if (Ask(planner, options) is not ({ Result: PlanOutcome.Proposed { Best.Rig.Placements: { Count: > 0 } chosen } } first))
                continue;
            var keep = options with { Pin = [chosen[random.Next(chosen.Count)].Id] };
            var ban = options with { Ban = [chosen[random.Next(chosen.Count)].Id] };
            var others = problem.Problem.Devices.Select(d => d.Id).Except(chosen.Select(p => p.Id)).ToList();
            var pin = options with { Pin = [others[random.Next(others.Count)]] };
            lines.Add(new(problem.Name, Ms(first), Ms(Ask(planner, keep)), Ms(Ask(new(), keep)), Ms(Ask(planner, ban)), Ms(Ask(new(), ban)), Ms(Ask(planner, pin)), Ms(Ask(new(), pin)), Ms(Ask(planner, options))));
            Console.WriteLine(JsonSerializer.Serialize(lines[^1], JsonSerializerOptions.Web));

            Measured<PlanOutcome> Ask(RigPlanner by, PlanOptions how)
            {
                var question = NamedProblem.Of(problem.Name, problem.Problem.Draft with { Options = how }).Within(limit).Problem;
                return Measured<PlanOutcome>.Of(() => by.PlanAsync(question, PlannerOptions.Default with { Explain = false }).GetAwaiter().GetResult());
            }
        }

        Console.Error.WriteLine($"medians, as ratios: a thing of the answer pinned, to the first ask {Median(l => l.Keep / l.First)}, to the same without a memory {Median(l => l.Keep / l.KeepUnremembered)}; banned {Median(l => l.Ban / l.First)} and {Median(l => l.Ban / l.BanUnremembered)}; "
            + $"another pinned {Median(l => l.Pin / l.First)} and {Median(l => l.Pin / l.PinUnremembered)}; the same once more {Median(l => l.Same / l.First)}");
        return 0;

        string Median(Func<AgainLine, double> of) => lines.Select(of).Order().ElementAtOrDefault(lines.Count / 2).ToString("0.00");
    }

    private static double Ms(Measured<PlanOutcome> measured) => Math.Round(measured.Cpu.TotalMilliseconds, 1);

    /// <summary>Milliseconds of processor time.</summary>
    private sealed record AgainLine(string File, double First, double Keep, double KeepUnremembered, double Ban, double BanUnremembered, double Pin, double PinUnremembered, double Same);
}
