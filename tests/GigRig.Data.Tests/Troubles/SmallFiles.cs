using System.Runtime.InteropServices;

namespace GigRig.Data.Tests.Troubles;

/// <summary>
/// Forbids this process for good to write files beyond a size, which is as near to a full disk as one comes without rights of an administrator: every
/// write fails in the operating system, also of what is no database. Source: POSIX, <c>setrlimit</c>, <c>RLIMIT_FSIZE</c>.
/// </summary>
internal static class SmallFiles
{
    // The same numbers on Linux and macOS.
    private const int FileSize = 1;
    private const int ExceededSignal = 25;
    private const nint Ignore = 1;

    public static bool CanBeForbidden => OperatingSystem.IsLinux() || OperatingSystem.IsMacOS();

    public static void ForbidBeyond(ulong bytes)
    {
        // Ignored, the signal turns into an error of the write.
        _ = SetHandler(ExceededSignal, Ignore);
        var limit = new Limit { Soft = bytes, Hard = bytes };
        if (SetLimit(FileSize, ref limit) != 0)
            throw new InvalidOperationException($"The limit was not set: error {Marshal.GetLastPInvokeError()}.");
    }

    [DllImport("libc", EntryPoint = "setrlimit", SetLastError = true)]
    private static extern int SetLimit(int resource, ref Limit limit);

    [DllImport("libc", EntryPoint = "signal")]
    private static extern nint SetHandler(int signal, nint handler);

    private struct Limit
    {
        public ulong Soft;
        public ulong Hard;
    }
}
