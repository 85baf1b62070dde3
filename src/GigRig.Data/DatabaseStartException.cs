namespace GigRig.Data;

/// <summary>Why the library could not be opened.</summary>
public enum DatabaseStartFault
{
    /// <summary>Another process holds the data folder.</summary>
    InUse,

    /// <summary>The folder can't be made or written.</summary>
    NoAccess,

    /// <summary>There was a library here, and its file is gone or empty.</summary>
    Missing,

    /// <summary>The file is not a sound database of ours.</summary>
    Damaged,

    /// <summary>It was last used by a newer release of the app.</summary>
    Newer,

    /// <summary>It could not be made, or not be brought up to date.</summary>
    NotPrepared,

    /// <summary>The SQLite library in use has a known fault that can damage data.</summary>
    UnsafeEngine,
}

/// <summary>The library could not be opened. The message is for whoever runs the app: what is wrong and what to do.</summary>
public sealed class DatabaseStartException : Exception
{
    internal DatabaseStartException(DatabaseStartFault fault, string message, Exception? inner = null)
        : base(message, inner) => Fault = fault;

    public DatabaseStartFault Fault { get; }
}
