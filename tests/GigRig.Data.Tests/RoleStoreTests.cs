namespace GigRig.Data.Tests;

public sealed class RoleStoreTests
{
    private static readonly OwnRole BirdSong = new(new("bird-song"), "Bird song");

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_second_role_with_the_same_key_is_refused_by_name()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        await library.Roles.AddAsync(BirdSong, Cancel);

        var refusal = await Assert.ThrowsAsync<DuplicateRoleException>(() => library.Roles.AddAsync(BirdSong with { Title = "Birds" }, Cancel));

        Assert.Equal("There already is a role with the key \"bird-song\": \"Bird song\". Choose another key, or change that one.", refusal.Message);
    }

    [Fact]
    public async Task A_deleted_role_frees_its_key_and_can_come_back_only_while_it_is_free()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var first = await library.Roles.AddAsync(BirdSong, Cancel);
        await library.Roles.DeleteAsync(first.Id, first.Version, Cancel);
        var second = await library.Roles.AddAsync(BirdSong, Cancel);

        await Assert.ThrowsAsync<DuplicateRoleException>(() => library.Roles.RestoreAsync(first.Id, Cancel));
        await library.Roles.DeleteAsync(second.Id, second.Version, Cancel);
        Assert.True(await library.Roles.RestoreAsync(first.Id, Cancel));

        Assert.Equal(first.Id, Assert.Single(await library.Roles.AllAsync(Cancel)).Id);
    }

    [Fact]
    public async Task Changing_a_title_keeps_the_key()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var first = await library.Roles.AddAsync(BirdSong, Cancel);

        var second = await library.Roles.SaveAsync(first with { Item = BirdSong with { Title = "Birds" } }, Cancel);

        Assert.Equal([second], await library.Roles.AllAsync(Cancel));
    }
}
