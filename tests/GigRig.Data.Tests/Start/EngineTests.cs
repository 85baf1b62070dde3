using GigRig.Data.Start;
using Microsoft.EntityFrameworkCore;

namespace GigRig.Data.Tests.Start;

public sealed class EngineTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    // Source: sqlite.org/pragma.html. synchronous: 2 = FULL.
    [Theory]
    [InlineData("journal_mode", "wal")]
    [InlineData("synchronous", "2")]
    [InlineData("foreign_keys", "1")]
    [InlineData("trusted_schema", "0")]
    [InlineData("cell_size_check", "1")]
    public async Task Every_connection_has_the_settings_we_claim(string pragma, string value)
    {
        await using var library = await LibraryOnDisk.NewAsync();
        await using var first = library.Database();
        await using var second = library.Database();

        Assert.Equal(value, await AskAsync(first, pragma));
        Assert.Equal(value, await AskAsync(second, pragma));
    }

    // Source: sqlite.org/wal.html, WAL-reset bug: present up to 3.51.2, fixed in 3.51.3.
    [Theory]
    [InlineData("3.51.2", false)]
    [InlineData("3.40.1", false)]
    [InlineData("unknown", false)]
    [InlineData("3.51.3", true)]
    [InlineData("3.53.0", true)]
    public void An_engine_with_the_known_fault_is_refused(string version, bool good)
    {
        var fault = Record.Exception(() => EngineVersion.Require(version));

        Assert.Equal(good, fault is null);
        if (!good)
            Assert.Equal(DatabaseStartFault.UnsafeEngine, Assert.IsType<DatabaseStartException>(fault).Fault);
    }

    [Fact]
    public void The_engine_we_ship_is_good() => EngineVersion.Require();

    private static async Task<string> AskAsync(GigRigDb db, string pragma)
    {
        await db.Database.OpenConnectionAsync(Cancel);
        await using var command = db.Database.GetDbConnection().CreateCommand();
        command.CommandText = $"PRAGMA {pragma}";
        return $"{await command.ExecuteScalarAsync(Cancel)}";
    }
}
