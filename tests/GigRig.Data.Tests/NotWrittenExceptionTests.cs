using Microsoft.Data.Sqlite;

namespace GigRig.Data.Tests;

public sealed class NotWrittenExceptionTests
{
    // Result codes: sqlite.org/rescode.html.
    [Theory]
    [InlineData(5, "another program keeps the library /d/gigrig.db busy. End that one")]
    [InlineData(6, "another program keeps the library /d/gigrig.db busy. End that one")]
    [InlineData(8, "the library /d/gigrig.db may not be written. Give the app the right")]
    [InlineData(10, "the disk did not take it (it hurts). Look at the free space and the health of the disk with /d/gigrig.db")]
    [InlineData(13, "the disk with the library /d/gigrig.db is full. Free some space on it")]
    [InlineData(14, "the library /d/gigrig.db can't be opened. See that it is there")]
    public void What_the_disk_or_the_system_refuses_is_told_by_its_cause_with_what_to_do(int code, string reason)
    {
        var told = NotWrittenException.Of(new SqliteException("it hurts.", code), "/d/gigrig.db")!;

        Assert.StartsWith($"Nothing was saved: {reason}", told.Message);
        Assert.EndsWith("then try again. What was saved before is safe.", told.Message);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(11)]
    [InlineData(19)]
    public void Anything_else_is_no_matter_of_the_disk(int code) => Assert.Null(NotWrittenException.Of(new SqliteException("it hurts", code), "/d/gigrig.db"));
}
