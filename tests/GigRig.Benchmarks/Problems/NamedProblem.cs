using GigRig.Domain;
using GigRig.Domain.Rigs;

namespace GigRig.Benchmarks.Problems;

/// <summary>A problem with the name of its file, its seed or its published instance.</summary>
internal sealed record NamedProblem(string Name, RigProblem Problem, PublishedAnswer? Published = null)
{
    /// <summary>Throws where a problem of our own making is refused.</summary>
    public static NamedProblem Of(string name, RigProblemDraft draft, PublishedAnswer? published = null) => RigProblem.Create(draft) switch
    {
        ProblemCheck.Accepted accepted => new(name, accepted.Problem, published),
        ProblemCheck.Refused refused => throw new InvalidOperationException($"{name}: {string.Join(" ", refused.Complaints)}"),
        var check => throw new InvalidOperationException($"{name}: {check}"),
    };

    /// <summary>The same question with this much time and without alternatives, so that one choice is timed.</summary>
    public NamedProblem Within(TimeSpan limit, bool arrange = false) =>
        Of(Name, Problem.Draft with { Options = Problem.Options with { TimeLimit = limit, Arrange = arrange, Alternatives = 0 } }, Published);
}

/// <summary>What was proved in print: the most value on the plate, or whether all pieces fit.</summary>
internal sealed record PublishedAnswer(long? Optimum = null, bool? Fits = null);
