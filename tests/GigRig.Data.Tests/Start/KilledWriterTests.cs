using GigRig.Data.Tests.Troubles;
using GigRig.TestKit.Building;

namespace GigRig.Data.Tests.Start;

/// <summary>A process that is killed while it writes loses nothing it had acknowledged. (A power cut can't be produced here and is not claimed.)</summary>
public sealed class KilledWriterTests
{
    private const string FolderKey = "GIGRIG_TEST_KILLED_FOLDER";

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData(3)]
    [InlineData(25)]
    public async Task Everything_acknowledged_is_there_after_a_kill(int acknowledged)
    {
        await using var library = LibraryOnDisk.Unopened();
        using var writer = SecondProcess.Start(GetType(), nameof(Writes_until_it_is_killed), (FolderKey, library.Folder.Path));
        try
        {
            while (Acknowledged(library.Folder.Path).Count < acknowledged && !writer.HasExited)
                await Task.Delay(10, Cancel);
            Assert.False(writer.HasExited, "The writer ended by itself.");
        }
        finally
        {
            writer.Kill();
        }

        await writer.WaitForExitAsync(Cancel);
        var names = Acknowledged(library.Folder.Path);

        await library.OpenAsync();

        var stored = (await library.Gear.DevicesAsync(Cancel)).Select(device => device.Item.Thing.Name).ToHashSet();
        Assert.True(names.Count >= acknowledged);
        Assert.Subset(stored, names.ToHashSet());
        Assert.InRange(stored.Count, names.Count, names.Count + 1);
    }

    /// <summary>The writer: this very test program, started once more by the test above to run this alone.</summary>
    [Fact(Explicit = true)]
    public async Task Writes_until_it_is_killed()
    {
        if (Environment.GetEnvironmentVariable(FolderKey) is not { } folder)
            return;
        var library = LibraryOnDisk.Unopened(folder);
        await library.OpenAsync();
        // Ends some day even if nobody is left to kill it.
        for (var i = 0; i < 5000; i++)
        {
            await library.Gear.AddAsync(A.Device($"device {i}"), new(), Cancel);
            await File.AppendAllTextAsync(AcknowledgedFile(folder), $"device {i}\n", Cancel);
        }
    }

    private static string AcknowledgedFile(string folder) => Path.Combine(folder, "acknowledged.txt");

    // The last line may be half written.
    private static List<string> Acknowledged(string folder) => File.Exists(AcknowledgedFile(folder))
        ? [.. File.ReadAllText(AcknowledgedFile(folder)).Split('\n').SkipLast(1)]
        : [];
}
