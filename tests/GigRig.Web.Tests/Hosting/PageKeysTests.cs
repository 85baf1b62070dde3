using GigRig.Web.Hosting;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.Extensions.DependencyInjection;
using Xunit;

namespace GigRig.Web.Tests.Hosting;

public sealed class PageKeysTests : IDisposable
{
    private readonly DirectoryInfo data = Directory.CreateTempSubdirectory("gigrig-keys-");

    private string Folder => PageKeys.Folder(data.FullName);

    [Fact]
    public void A_first_start_makes_them_and_a_later_one_reads_them()
    {
        Require();
        var made = Directory.GetFiles(Folder);

        Require();

        Assert.Equal(Assert.Single(made), Assert.Single(Directory.GetFiles(Folder)));
    }

    [Fact]
    public void Where_they_cannot_be_kept_the_start_is_refused_in_words()
    {
        File.WriteAllText(Folder, "in the way");

        var refused = Assert.Throws<StartRefusedException>(Require);

        Assert.StartsWith($"Not started: the keys of open pages in {Folder} can't be read or made: ", refused.Message);
    }

    [Fact]
    public void Where_one_is_damaged_the_start_is_refused_until_the_folder_is_emptied()
    {
        Require();
        File.WriteAllText(Directory.GetFiles(Folder)[0], "<key");

        var refused = Assert.Throws<StartRefusedException>(Require);

        Assert.EndsWith("That folder may be emptied; it costs a reload of open pages.", refused.Message);
        Directory.Delete(Folder, recursive: true);
        Require();
    }

    public void Dispose() => data.Delete(recursive: true);

    private void Require()
    {
        using var services = new ServiceCollection().AddLogging().AddPageKeys(data.FullName).BuildServiceProvider();
        PageKeys.Require(services.GetRequiredService<IDataProtectionProvider>(), data.FullName);
    }
}
