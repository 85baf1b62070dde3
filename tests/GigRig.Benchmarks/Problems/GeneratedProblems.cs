using GigRig.Benchmarks.Generating;

namespace GigRig.Benchmarks.Problems;

/// <summary>Libraries of one size for one board, one a seed.</summary>
internal sealed record GeneratedProblems(int Devices, BoardSize Board, int FirstSeed, int Count)
{
    public IEnumerable<NamedProblem> All() => Enumerable.Range(FirstSeed, Count)
        .Select(seed => NamedProblem.Of($"{Devices}-{Board}-seed{seed}", new LibraryGenerator(seed).Make(Devices, Board.Width, Board.Depth)));
}

/// <summary>Width and depth of a board in millimetres, written <c>460x135</c>.</summary>
internal readonly record struct BoardSize(int Width, int Depth)
{
    private const int Most = 3000;

    /// <summary>Null where the text is no such size.</summary>
    public static BoardSize? Parse(string text) =>
        text.Split('x', 'X', '×') is [var width, var depth] && int.TryParse(width, out var w) && int.TryParse(depth, out var d) && w is > 0 and <= Most && d is > 0 and <= Most
            ? new(w, d)
            : null;

    public override string ToString() => $"{Width}x{Depth}";
}
