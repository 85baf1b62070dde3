using System.Text.Json;

namespace GigRig.TestKit.Instances;

/// <summary>A question that the planner once answered wrongly.</summary>
/// <param name="Tale">What went wrong.</param>
/// <param name="Status">The right answer, as in <c>rig-outcome/1</c>.</param>
/// <param name="Scores">The first four tiers, wants, rating, devices, mass, of the best rig and of each further one asked for; none where it is impossible.</param>
/// <param name="Problem">A <c>rig-problem/1</c> document.</param>
public sealed record FoundProblem(string Name, string Tale, string Status, long[][] Scores, JsonElement Problem)
{
    public override string ToString() => Name;
}

/// <summary>Found faults, kept for good; see <c>tests/instances/README.md</c>.</summary>
public static class FoundProblems
{
    public static IReadOnlyList<FoundProblem> All { get; } = InstanceFiles.Read<FoundProblem>("found.json");
}
