using System.Net;
using GigRig.Data;
using GigRig.Data.Files;
using GigRig.TestKit.Building;
using GigRig.Web.Tests.Hosting;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.DependencyInjection;
using Xunit;

namespace GigRig.Web.Tests.Features.ImportExport;

public sealed class LibraryFileEndpointTests(TestApp app) : IClassFixture<TestApp>
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task The_library_is_a_file_that_reads_back_unless_a_rig_in_it_is_spoilt_which_is_said()
    {
        using var client = app.CreateClient();
        var rigs = app.Services.GetRequiredService<RigStore>();
        var jam = await rigs.AddAsync("Jam", "", A.Draft().Problem(), A.Rig(), Cancel);

        using (var file = await client.GetAsync(GigRigUrls.LibraryFile, Cancel))
        {
            Assert.Equal("attachment", file.Content.Headers.ContentDisposition!.DispositionType);
            Assert.Equal("no-store", file.Headers.CacheControl!.ToString());
            var preview = await app.Services.GetRequiredService<LibraryFile>().PreviewAsync(await file.Content.ReadAsStreamAsync(Cancel), Cancel);
            Assert.Equal((0, 0, 1), (preview.Added, preview.Changed, preview.Same));
        }

        Spoil(Path.Combine(app.DataFolder, "gigrig.db"));
        using (var refusal = await client.GetAsync(GigRigUrls.LibraryFile, Cancel))
        {
            Assert.Equal(HttpStatusCode.Conflict, refusal.StatusCode);
            Assert.StartsWith("No file was made. The stored rig \"Jam\" can't be read:", await refusal.Content.ReadAsStringAsync(Cancel));
        }

        await rigs.DeleteAsync(jam.Id, jam.Version, Cancel);
        Assert.Contains("gig-library/1", await client.GetStringAsync(GigRigUrls.LibraryFile, Cancel));
    }

    private static void Spoil(string database)
    {
        using var connection = new SqliteConnection($"Data Source={database};Pooling=False");
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = "UPDATE \"Rigs\" SET \"ProblemJson\" = 'x'";
        command.ExecuteNonQuery();
    }
}
