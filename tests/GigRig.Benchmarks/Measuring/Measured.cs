using System.Diagnostics;

namespace GigRig.Benchmarks.Measuring;

/// <summary>A result with what it took.</summary>
/// <param name="Cpu">Processor time of the whole process, all threads.</param>
/// <param name="PeakBytes">The most memory the process held meanwhile, looked at every few milliseconds.</param>
internal sealed record Measured<T>(T Result, TimeSpan Wall, TimeSpan Cpu, long PeakBytes)
{
    /// <summary>Clears away what earlier work left before it starts counting.</summary>
    public static Measured<T> Of(Func<T> work)
    {
        GC.Collect();
        GC.WaitForPendingFinalizers();
        GC.Collect();
        using var watch = new MemoryWatch();
        var cpu = Environment.CpuUsage.TotalTime;
        var started = Stopwatch.GetTimestamp();
        var result = work();
        var wall = Stopwatch.GetElapsedTime(started);
        return new(result, wall, Environment.CpuUsage.TotalTime - cpu, watch.Peak());
    }
}

/// <summary>Looks at the memory of the process until it is disposed of.</summary>
internal sealed class MemoryWatch : IDisposable
{
    private static readonly TimeSpan Every = TimeSpan.FromMilliseconds(10);

    private readonly Timer timer;
    private long peak;

    public MemoryWatch()
    {
        peak = Environment.WorkingSet;
        timer = new(_ => Look(), null, Every, Every);
    }

    public long Peak()
    {
        Look();
        return Interlocked.Read(ref peak);
    }

    public void Dispose() => timer.Dispose();

    private void Look()
    {
        var now = Environment.WorkingSet;
        for (var seen = Interlocked.Read(ref peak); now > seen; seen = Interlocked.Read(ref peak))
            Interlocked.CompareExchange(ref peak, now, seen);
    }
}
