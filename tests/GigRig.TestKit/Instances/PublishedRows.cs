namespace GigRig.TestKit.Instances;

/// <summary>A single-row layout question: in which order do things of these lengths stand so that flow × distance between centres is least?</summary>
/// <param name="Flow">Between each two, symmetric.</param>
public sealed record PublishedRow(string Name, string Paper, decimal Optimum, int[] Lengths, int[][] Flow)
{
    public override string ToString() => Name;
}

/// <summary>Single-row layouts with a proved best value; see <c>tests/instances/README.md</c>.</summary>
public static class PublishedRows
{
    public static IReadOnlyList<PublishedRow> All { get; } = InstanceFiles.Read<PublishedRow>("single-row-layout.json");
}
