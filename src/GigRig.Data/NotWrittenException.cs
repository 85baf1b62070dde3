using Microsoft.Data.Sqlite;

namespace GigRig.Data;

/// <summary>
/// The library's file could not be written: a full or failing disk, missing rights, somebody else at it. Nothing of what was to be saved is in it and
/// everything saved before is. The message says so, with what to do.
/// </summary>
public sealed class NotWrittenException : NotSavedException
{
    private NotWrittenException(string message, SqliteException cause)
        : base(message, cause)
    {
    }

    /// <summary>Null where the cause is another, such as a constraint: then it is a fault of ours.</summary>
    /// <param name="file">The database.</param>
    internal static NotWrittenException? Of(SqliteException cause, string file) =>
        Reason(cause, file) is { } reason ? new($"Nothing was saved: {reason} What was saved before is safe.", cause) : null;

    // Primary result codes; source: sqlite.org/rescode.html.
    private static string? Reason(SqliteException cause, string file) => cause.SqliteErrorCode switch
    {
        5 or 6 => $"another program keeps the library {file} busy. End that one, then try again.",
        14 => $"the library {file} can't be opened. See that it is there and that the app may write to its folder, then try again.",
        8 => $"the library {file} may not be written. Give the app the right to write to it and its folder, then try again.",
        10 => $"the disk did not take it ({cause.Message.TrimEnd('.')}). Look at the free space and the health of the disk with {file}, then try again.",
        13 => $"the disk with the library {file} is full. Free some space on it, then try again.",
        _ => null,
    };
}
