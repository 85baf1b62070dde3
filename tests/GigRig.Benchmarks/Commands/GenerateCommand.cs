using System.CommandLine;
using GigRig.Benchmarks.Problems;

namespace GigRig.Benchmarks.Commands;

/// <summary><c>generate</c>: writes realistic libraries as problem files, the same for the same seed.</summary>
internal static class GenerateCommand
{
    private static readonly LibraryOptions Library = new("--devices");

    private static readonly Option<DirectoryInfo> Out = new("--out") { Description = "The folder to write to; made where it is missing.", Required = true };

    public static Command Create()
    {
        var command = new Command("generate", "Write realistic problems as rig-problem/1 files.") { Out };
        Library.AddTo(command);
        command.SetAction(Run);
        return command;
    }

    private static int Run(ParseResult asked)
    {
        var folder = asked.GetValue(Out)!;
        foreach (var problem in Library.Of(asked).All())
        {
            ProblemFiles.Write(folder, problem);
            Console.WriteLine(Path.Combine(folder.ToString(), $"{problem.Name}.json"));
        }

        return 0;
    }
}
