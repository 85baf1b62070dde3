using GigRig.Domain.Events;
using GigRig.Domain.Rigs;

namespace GigRig.TestKit.Instances;

/// <summary>A two-dimensional knapsack from the literature: the most value of pieces on one plate.</summary>
/// <param name="Turning">Whether pieces may be turned a quarter.</param>
/// <param name="Optimum">The proved best value; <c>Score.Wants</c> of a proven proposal.</param>
/// <param name="Pieces">Each width, depth, value, copies.</param>
public sealed record PublishedKnapsack(string Name, string Paper, int Width, int Depth, bool Turning, int Optimum, int[][] Pieces)
{
    /// <summary>Each piece a want with its value as weight.</summary>
    public RigProblemDraft ToProblem() =>
        Plate.Ask(Name, Width, Depth, Turning, NeedLevel.Want, Pieces.Select(p => (p[0], p[1], p[2], p[3])));

    public override string ToString() => Turning ? $"{Name} turning" : Name;
}

/// <summary>Two-dimensional knapsacks with a proved best value; see <c>tests/instances/README.md</c>.</summary>
public static class PublishedKnapsacks
{
    public static IReadOnlyList<PublishedKnapsack> Oriented { get; } = InstanceFiles.Read<PublishedKnapsack>("knapsack-oriented.json");

    public static IReadOnlyList<PublishedKnapsack> Turning { get; } = InstanceFiles.Read<PublishedKnapsack>("knapsack-turning.json");

    public static IReadOnlyList<PublishedKnapsack> Gcut { get; } = InstanceFiles.Read<PublishedKnapsack>("knapsack-gcut.json");

    public static IEnumerable<PublishedKnapsack> All => [.. Oriented, .. Turning, .. Gcut];
}
