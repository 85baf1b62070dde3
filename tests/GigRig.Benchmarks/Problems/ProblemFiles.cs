using GigRig.Domain;
using GigRig.Domain.Documents;
using GigRig.Domain.Rigs;

namespace GigRig.Benchmarks.Problems;

/// <summary>Reads and writes <c>rig-problem/1</c> files.</summary>
internal static class ProblemFiles
{
    /// <summary>Null where the text asks nothing that makes sense; then the complaints say why.</summary>
    public static (NamedProblem? Problem, ValueList<Complaint> Complaints) Read(FileInfo file)
    {
        using var stream = file.OpenRead();
        return RigProblemJson.Read(stream) switch
        {
            ProblemCheck.Accepted accepted => (new(file.Name, accepted.Problem), []),
            ProblemCheck.Refused refused => (null, refused.Complaints),
            var check => throw new InvalidOperationException($"{file.Name}: {check}"),
        };
    }

    public static void Write(DirectoryInfo folder, NamedProblem problem)
    {
        folder.Create();
        File.WriteAllText(Path.Combine(folder.FullName, $"{problem.Name}.json"), RigProblemJson.Write(problem.Problem) + "\n");
    }
}
