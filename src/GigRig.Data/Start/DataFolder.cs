using Microsoft.Data.Sqlite;

namespace GigRig.Data.Start;

/// <summary>The files a library consists of.</summary>
internal sealed class DataFolder(string path)
{
    public string Path { get; } = System.IO.Path.GetFullPath(path);

    public string Database => In("gigrig.db");

    /// <summary>Held while the app runs.</summary>
    public string Lock => In("gigrig.lock");

    /// <summary>There once a library has been made here: without the database beside it, something is wrong.</summary>
    public string Marker => In("gigrig.used");

    /// <summary>Copies made before the database is changed to a newer shape.</summary>
    public string Copies => In("copies");

    /// <summary>Makes nothing: a library that was taken away under the running app must not be replaced by an empty one.</summary>
    public string ConnectionString => new SqliteConnectionStringBuilder
    {
        DataSource = Database,
        Mode = SqliteOpenMode.ReadWrite,
        ForeignKeys = true,
        DefaultTimeout = 10,
    }.ToString();

    /// <summary>For a first start alone.</summary>
    public string CreatingConnectionString => new SqliteConnectionStringBuilder
    {
        DataSource = Database,
        Mode = SqliteOpenMode.ReadWriteCreate,
        Pooling = false,
    }.ToString();

    /// <summary>Leaves the file as it is, and keeps no handle to it.</summary>
    public string ReadOnlyConnectionString => new SqliteConnectionStringBuilder
    {
        DataSource = Database,
        Mode = SqliteOpenMode.ReadOnly,
        Pooling = false,
    }.ToString();

    public void Make()
    {
        try
        {
            Directory.CreateDirectory(Path);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            throw new DatabaseStartException(
                DatabaseStartFault.NoAccess,
                $"The data folder {Path} can't be made: {fault.Message} Choose another one, or give the app the right to write there.",
                fault);
        }
    }

    /// <summary>Notes that there is a library here. Written once: a start needs no free space.</summary>
    public void Mark()
    {
        if (File.Exists(Marker))
            return;
        try
        {
            File.WriteAllText(Marker, "There is a library in this folder. Without this file, a lost database would not be noticed.\n");
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            throw new DatabaseStartException(
                DatabaseStartFault.NoAccess,
                $"The file {Marker} can't be written: {fault.Message} Check the free space and the rights on {Path}, then start again.",
                fault);
        }
    }

    /// <summary>What is only here after a library has been in use.</summary>
    public IEnumerable<string> SignsOfUse()
    {
        string[] signs = [Marker, Database + "-wal", .. Directory.Exists(Copies) ? Directory.EnumerateFiles(Copies) : []];
        return signs.Where(File.Exists);
    }

    private string In(string name) => System.IO.Path.Combine(Path, name);
}
