using GigRig.Domain.Events;
using GigRig.Domain.Rigs;

namespace GigRig.TestKit.Instances;

/// <summary>A question from the literature: do all these pieces fit on one plate, unturned?</summary>
/// <param name="Pieces">Each width, depth, copies.</param>
public sealed record PublishedPacking(string Name, string Paper, int Width, int Depth, bool Feasible, int[][] Pieces)
{
    /// <summary>Each piece a must: proposed where it fits, impossible where it does not.</summary>
    public RigProblemDraft ToProblem() =>
        Plate.Ask(Name, Width, Depth, turning: false, NeedLevel.Must, Pieces.Select(p => (p[0], p[1], Need.DefaultWeight, p[2])));

    public override string ToString() => Name;
}

/// <summary>Packing questions with a proved answer; see <c>tests/instances/README.md</c>.</summary>
public static class PublishedPackings
{
    public static IReadOnlyList<PublishedPacking> All { get; } = InstanceFiles.Read<PublishedPacking>("packing-feasibility.json");
}
