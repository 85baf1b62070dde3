using System.Diagnostics;

namespace GigRig.Data.Tests.Troubles;

/// <summary>This very test program, started once more to run one explicit test alone, so that it can be killed.</summary>
internal static class SecondProcess
{
    public static Process Start(Type tests, string method, params (string Name, string Value)[] environment)
    {
        var start = new ProcessStartInfo(Environment.ProcessPath!)
        {
            ArgumentList = { "-explicit", "only", "-method", $"{tests.FullName}.{method}" },
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        foreach (var (name, value) in environment)
            start.Environment[name] = value;
        var process = Process.Start(start)!;
        process.BeginOutputReadLine();
        process.BeginErrorReadLine();
        return process;
    }

    /// <summary>Waits for its end. False where it ended in another way than by being killed.</summary>
    public static async Task<bool> IsKilledAsync(this Process process, CancellationToken cancel)
    {
        await process.WaitForExitAsync(cancel);
        // On Unix 128 and the number of SIGKILL.
        return process.ExitCode == (OperatingSystem.IsWindows() ? -1 : 128 + 9);
    }
}
