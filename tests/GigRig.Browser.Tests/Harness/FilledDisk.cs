using System.Runtime.InteropServices;

namespace GigRig.Browser.Tests.Harness;

/// <summary>
/// Takes the room from a running app and gives it back: no file of it may be written beyond a few bytes, which fails in the operating system as on a full
/// disk. Sources: POSIX <c>setrlimit</c> (RLIMIT_FSIZE), Linux <c>prlimit(2)</c>.
/// </summary>
internal static class FilledDisk
{
    private const int FileSize = 1;
    private const int ExceededSignal = 25;
    private const nint Ignore = 1;
    private const ulong Endless = ulong.MaxValue;

    public static bool IsKnownHere => OperatingSystem.IsLinux();

    /// <summary>Before the app is started: it inherits that the signal is ignored, and the write fails instead.</summary>
    public static void Prepare() => _ = SetHandler(ExceededSignal, Ignore);

    public static void Fill(int process) => Limit(process, 4096);

    public static void GiveRoom(int process) => Limit(process, Endless);

    private static void Limit(int process, ulong bytes)
    {
        var limit = new Limits { Soft = bytes, Hard = Endless };
        if (SetLimit(process, FileSize, in limit, 0) != 0)
            throw new InvalidOperationException($"The limit was not set: error {Marshal.GetLastPInvokeError()}.");
    }

    [DllImport("libc", EntryPoint = "prlimit", SetLastError = true)]
    private static extern int SetLimit(int process, int resource, in Limits limit, nint old);

    [DllImport("libc", EntryPoint = "signal")]
    private static extern nint SetHandler(int signal, nint handler);

    private struct Limits
    {
        public ulong Soft;
        public ulong Hard;
    }
}
