using Microsoft.Data.Sqlite;

namespace GigRig.Data.Start;

/// <summary>Keeps a second app off the same data folder. Let go when the service provider is disposed, or by the system when the process ends.</summary>
internal sealed class DataFolderLock(DataFolder folder) : IDisposable
{
    private FileStream? held;

    public void Take()
    {
        if (held is not null)
            return;
        try
        {
            held = new FileStream(folder.Lock, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
        }
        catch (IOException fault) when (IsHeld(fault))
        {
            throw new DatabaseStartException(
                DatabaseStartFault.InUse,
                $"The data folder {folder.Path} is in use by another running copy of the app. Stop that one first, or choose another data folder.",
                fault);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            throw new DatabaseStartException(
                DatabaseStartFault.NoAccess,
                $"The data folder {folder.Path} can't be written: {fault.Message} Check the free space, choose another folder, or give the app the right to write there.",
                fault);
        }
    }

    // Anything else, a full or a read-only disk, must not send the owner looking for a second copy that is not there.
    // Windows: ERROR_SHARING_VIOLATION, as an HRESULT. Elsewhere flock says EWOULDBLOCK: 11 on Linux, 35 on macOS.
    private static bool IsHeld(IOException fault) => OperatingSystem.IsWindows() ? fault.HResult == unchecked((int)0x80070020) : fault.HResult is 11 or 35;

    public void Dispose()
    {
        if (held is null)
            return;
        // The last connection that closes moves the write-ahead log into the database: at rest the library is one file.
        using (var ours = new SqliteConnection(folder.ConnectionString))
            SqliteConnection.ClearPool(ours);
        held.Dispose();
        held = null;
    }
}
