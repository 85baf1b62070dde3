using GigRig.TestKit.Building;

namespace GigRig.Data.Tests.Start;

public sealed class DamagedFilesTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public static TheoryData<string> Damages => new(Ways.Keys);

    private static Dictionary<string, Func<byte[], byte[]>> Ways { get; } = new()
    {
        ["not a database"] = _ => "What is this?"u8.ToArray(),
        ["cut off in the middle of a page"] = bytes => bytes[..(bytes.Length / 2 + 100)],
        ["cut off after the first page"] = bytes => bytes[..4096],
        ["first page zeroed"] = bytes => [.. new byte[4096], .. bytes[4096..]],
        ["noise in the middle"] = bytes => [.. bytes[..4096], .. Noise(bytes.Length - 4096)],
        ["somebody else's database"] = _ => Foreign(),
    };

    [Theory]
    [MemberData(nameof(Damages))]
    public async Task A_damaged_library_is_refused_by_name_and_left_as_it_is(string damage)
    {
        await using var sound = await LibraryOnDisk.NewAsync();
        await sound.Gear.AddAsync(A.Device("echo"), new(), Cancel);
        await sound.CloseAsync();
        var damaged = Ways[damage](await File.ReadAllBytesAsync(sound.Folder.Database, Cancel));
        await File.WriteAllBytesAsync(sound.Folder.Database, damaged, Cancel);

        await using var library = LibraryOnDisk.Unopened(sound.Folder.Path);
        var refusal = await Assert.ThrowsAsync<DatabaseStartException>(library.OpenAsync);

        Assert.Equal(DatabaseStartFault.Damaged, refusal.Fault);
        Assert.Contains("gigrig.db can't be read", refusal.Message);
        Assert.Equal(damaged, await File.ReadAllBytesAsync(sound.Folder.Database, Cancel));
    }

    [Fact]
    public async Task A_folder_where_the_database_should_be_is_refused()
    {
        await using var library = LibraryOnDisk.Unopened();
        Directory.CreateDirectory(library.Folder.Database);

        var refusal = await Assert.ThrowsAsync<DatabaseStartException>(library.OpenAsync);

        Assert.Equal(DatabaseStartFault.Damaged, refusal.Fault);
    }

    [Fact]
    public async Task A_file_where_the_data_folder_should_be_is_refused()
    {
        var file = Path.GetTempFileName();
        await using var library = LibraryOnDisk.Unopened(file);

        var refusal = await Assert.ThrowsAsync<DatabaseStartException>(library.OpenAsync);

        Assert.Equal(DatabaseStartFault.NoAccess, refusal.Fault);
        Assert.StartsWith($"The data folder {file} can't be made:", refusal.Message);
        File.Delete(file);
    }

    private static byte[] Noise(int length)
    {
        var noise = new byte[length];
        new Random(20270306).NextBytes(noise);
        return noise;
    }

    private static byte[] Foreign()
    {
        var path = Path.GetTempFileName();
        using (var connection = new Microsoft.Data.Sqlite.SqliteConnection($"Data Source={path};Pooling=False"))
        {
            connection.Open();
            using var command = connection.CreateCommand();
            command.CommandText = "CREATE TABLE recipes (name TEXT)";
            command.ExecuteNonQuery();
        }

        var bytes = File.ReadAllBytes(path);
        File.Delete(path);
        return bytes;
    }
}
