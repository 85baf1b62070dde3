using System.IO.Enumeration;
using GigRig.TestKit.Instances;

namespace GigRig.Benchmarks.Problems;

/// <summary>The published instances of <c>tests/instances</c> that are planning problems; single rows are a question of arranging and are not among them.</summary>
internal static class PublishedProblems
{
    public static IEnumerable<string> Names => All.Select(p => p.Name);

    private static IEnumerable<(string Name, Func<NamedProblem> Make)> All =>
    [
        .. PublishedKnapsacks.All.Select(k => Named(k.Turning ? $"{k.Name}-turning" : k.Name, name => NamedProblem.Of(name, k.ToProblem(), new(Optimum: k.Optimum)))),
        .. PublishedPackings.All.Select(p => Named(p.Name, name => NamedProblem.Of(name, p.ToProblem(), new(Fits: p.Feasible)))),
    ];

    /// <summary>Those whose name matches one of the patterns, in which <c>*</c> stands for anything; all of them without a pattern.</summary>
    public static IEnumerable<NamedProblem> Matching(IReadOnlyList<string> patterns) => All
        .Where(p => patterns.Count == 0 || patterns.Any(pattern => FileSystemName.MatchesSimpleExpression(pattern, p.Name)))
        .Select(p => p.Make());

    private static (string Name, Func<NamedProblem> Make) Named(string name, Func<string, NamedProblem> make) => (name, () => make(name));
}
