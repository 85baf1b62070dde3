using System.Collections.Concurrent;
using System.Diagnostics;
using System.Text.RegularExpressions;
using GigRig.Data;
using Microsoft.Extensions.DependencyInjection;

namespace GigRig.Browser.Tests.Harness;

/// <summary>The real app in a process of its own, on a free port of this machine, with a data folder of its own that outlives a restart.</summary>
internal sealed partial class RunningApp : IAsyncDisposable
{
    private static readonly TimeSpan StartLimit = TimeSpan.FromSeconds(60);

    private readonly DirectoryInfo data = Directory.CreateTempSubdirectory("gigrig-browser-");
    private readonly ConcurrentQueue<string> log = new();
    private Process? process;

    private RunningApp()
    {
    }

    /// <summary>Such as <c>http://127.0.0.1:41234</c>, without a slash at the end.</summary>
    public string Address { get; private set; } = "";

    public int ProcessId => process!.Id;

    public string Log => string.Join(Environment.NewLine, log);

    /// <param name="fill">Puts things into the library before the app sees it; null for a first start.</param>
    public static async Task<RunningApp> StartAsync(Func<IServiceProvider, Task>? fill)
    {
        var app = new RunningApp();
        if (fill is not null)
            await app.FillAsync(fill);
        await app.StartProcessAsync(port: 0);
        return app;
    }

    /// <summary>Stops the process without a warning, as a power cut would, and starts it on the same port with the same data.</summary>
    public async Task RestartAsync()
    {
        await KillAsync();
        await StartProcessAsync(new Uri(Address).Port);
    }

    public async ValueTask DisposeAsync()
    {
        await KillAsync();
        data.Delete(recursive: true);
    }

    /// <summary>Looks into the library behind the app's back.</summary>
    public async Task<T> LookIntoAsync<T>(Func<IServiceProvider, Task<T>> look)
    {
        await using var library = new ServiceCollection().AddGigRigData(data.FullName).BuildServiceProvider();
        return await look(library);
    }

    private async Task FillAsync(Func<IServiceProvider, Task> fill)
    {
        await using var library = new ServiceCollection().AddGigRigData(data.FullName).BuildServiceProvider();
        await DatabaseStart.RunAsync(library);
        await fill(library);
    }

    private async Task StartProcessAsync(int port)
    {
        var ready = new TaskCompletionSource<string>(TaskCreationOptions.RunContinuationsAsynchronously);
        // Started as the README starts it once it is built; beside the tests lies a full copy of the app.
        var start = new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, "GigRig.Web.dll"), "--urls", $"http://127.0.0.1:{port}"])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            Environment = { ["GIGRIG_DATA"] = data.FullName },
        };
        process = new Process { StartInfo = start, EnableRaisingEvents = true };
        process.OutputDataReceived += (_, line) => Take(line.Data);
        process.ErrorDataReceived += (_, line) => Take(line.Data);
        process.Exited += (_, _) => ready.TrySetException(new InvalidOperationException($"The app ended while starting:{Environment.NewLine}{Log}"));
        process.Start();
        process.BeginOutputReadLine();
        process.BeginErrorReadLine();
        Address = await ready.Task.WaitAsync(StartLimit);

        void Take(string? line)
        {
            if (line is null)
                return;
            log.Enqueue(line);
            if (ReadyLine().Match(line) is { Success: true } match)
                ready.TrySetResult(match.Groups[1].Value);
        }
    }

    private async Task KillAsync()
    {
        if (process is null)
            return;
        process.Kill(entireProcessTree: true);
        await process.WaitForExitAsync();
        process.Dispose();
        process = null;
    }

    [GeneratedRegex(@"ready on (http://[\d.]+:\d+)")]
    private static partial Regex ReadyLine();
}
