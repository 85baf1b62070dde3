using System.CommandLine;
using GigRig.Benchmarks.Problems;

namespace GigRig.Benchmarks.Commands;

/// <summary>Which libraries to generate. The number of devices goes by another name in each command.</summary>
internal sealed class LibraryOptions(string devicesName)
{
    private const int MostCount = 1000;

    private readonly Option<BoardSize> board = Options.Board();
    public Option<int> Seed { get; } = Options.Number("--seed", "The first seed; each further problem takes the next one", 0, int.MaxValue - MostCount, 1);
    private readonly Option<int> count = Options.Number("--count", "How many problems", 1, MostCount, 1);

    public Option<int> Devices { get; } = Options.Number(devicesName, "Owned devices in each library", 1, 1000, 60);

    public void AddTo(Command command)
    {
        command.Add(Devices);
        command.Add(board);
        command.Add(Seed);
        command.Add(count);
    }

    public bool AreGivenIn(ParseResult asked) => asked.GetResult(Devices) is { Implicit: false };

    public GeneratedProblems Of(ParseResult asked) =>
        new(asked.GetValue(Devices), asked.GetValue(board), asked.GetValue(Seed), asked.GetValue(count));
}
