using System.Security.Cryptography;
using System.Text;
using GigRig.TestKit.Building;
using Microsoft.EntityFrameworkCore;

namespace GigRig.Data.Tests;

public sealed class ShareLinkStoreTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Only_the_hash_of_a_token_is_stored_and_the_token_carries_160_bits()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var rig = await EmptyRigAsync(library);

        var token = await library.Links.CreateAsync(rig.Id, new("band"), Cancel);

        Assert.Equal(20, System.Buffers.Text.Base64Url.DecodeFromChars(token).Length);
        await using (var db = library.Database())
            Assert.Equal(SHA256.HashData(Encoding.ASCII.GetBytes(token)), (await db.ShareLinks.SingleAsync(Cancel)).TokenHash);
        await library.CloseAsync();
        Assert.DoesNotContain(token, Encoding.Latin1.GetString(await File.ReadAllBytesAsync(library.Folder.Database, Cancel)));
    }

    [Fact]
    public async Task A_rig_has_any_number_of_links_and_revoking_one_leaves_the_others()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var rig = await EmptyRigAsync(library);
        var band = await library.Links.CreateAsync(rig.Id, new("band"), Cancel);
        library.Clock.Now += TimeSpan.FromMinutes(1);
        var desk = await library.Links.CreateAsync(rig.Id, new("desk", library.Clock.Now.UtcDateTime.AddDays(1)), Cancel);
        var links = await library.Links.ForRigAsync(rig.Id, Cancel);
        Assert.Equal(["desk", "band"], links.Select(link => link.Name));

        await library.Links.RevokeAsync(links[0].Id, Cancel);

        Assert.NotEqual(band, desk);
        Assert.Equal([false, true], (await library.Links.ForRigAsync(rig.Id, Cancel)).Select(link => link.Works));
        Assert.Null(await library.Shared.FindAsync(desk, Cancel));
        Assert.NotNull(await library.Shared.FindAsync(band, Cancel));
        Assert.False(await library.Links.RevokeAsync(Guid.NewGuid(), Cancel));
    }

    [Fact]
    public async Task A_link_to_no_rig_one_that_has_expired_already_and_one_without_a_name_are_refused()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var rig = await EmptyRigAsync(library);

        var noRig = await Assert.ThrowsAsync<ArgumentException>(() => library.Links.CreateAsync(Guid.Empty, new("band"), Cancel));
        var late = await Assert.ThrowsAsync<ArgumentException>(() => library.Links.CreateAsync(rig.Id, new("band", library.Clock.Now.UtcDateTime), Cancel));

        var nameless = await Assert.ThrowsAsync<RefusedThingException>(() => library.Links.CreateAsync(rig.Id, new(""), Cancel));

        Assert.Equal("The share link can't be stored. The name is empty; give 1 to 200 characters.", nameless.Message);
        Assert.StartsWith("There is no rig with the id 00000000-0000-0000-0000-000000000000 to share. Save it first.", noRig.Message);
        Assert.StartsWith("The link would expire at 2027-03-06 20:15:00Z, which has passed. Choose a later time.", late.Message);
    }

    private static Task<Stored<SavedRig>> EmptyRigAsync(LibraryOnDisk library) =>
        library.Rigs.AddAsync("Jam", "", A.Draft().Problem(), A.Rig(), Cancel);
}
