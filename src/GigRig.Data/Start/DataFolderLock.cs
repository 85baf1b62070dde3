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
        catch (UnauthorizedAccessException fault)
        {
            throw new DatabaseStartException(
                DatabaseStartFault.NoAccess,
                $"The data folder {folder.Path} can't be written: {fault.Message} Choose another one, or give the app the right to write there.",
                fault);
        }
        catch (IOException fault)
        {
            throw new DatabaseStartException(
                DatabaseStartFault.InUse,
                $"The data folder {folder.Path} is in use by another running copy of the app. Stop that one first, or choose another data folder.",
                fault);
        }
    }

    public void Dispose()
    {
        held?.Dispose();
        held = null;
    }
}
