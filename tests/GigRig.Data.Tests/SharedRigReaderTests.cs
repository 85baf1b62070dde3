using GigRig.Data.Tests.Owners;
using GigRig.Domain.Gear;
using GigRig.Domain.Units;
using GigRig.TestKit.Building;

namespace GigRig.Data.Tests;

public sealed class SharedRigReaderTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_link_opens_the_rig_without_note_and_without_gear_that_stayed_at_home()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var saved = await JamRigAsync(library);
        var token = await library.Links.CreateAsync(saved.Id, new("for the band"), Cancel);

        var shared = await library.Shared.FindAsync(token, Cancel);

        Assert.Equal("Jam", shared!.Name);
        Assert.Equal(["echo"], shared.Problem.Devices.Select(device => device.Name));
        Assert.Equal(saved.Item.Rig, shared.Rig);
        Assert.Empty(shared.Problem.Options.Ban);
        Assert.Equal(["Bell"], shared.Problem.Roles.Select(role => role.Title));
    }

    [Fact]
    public async Task Unknown_malformed_revoked_expired_and_deleted_all_look_the_same()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var rig = await JamRigAsync(library);
        var expiring = await library.Links.CreateAsync(rig.Id, new("tonight", library.Clock.Now.UtcDateTime.AddHours(1)), Cancel);
        var revoked = await library.Links.CreateAsync(rig.Id, new("leaked"), Cancel);
        var deleted = await library.Links.CreateAsync(rig.Id, new("other"), Cancel);
        Assert.NotNull(await library.Shared.FindAsync(expiring, Cancel));
        Assert.NotNull(await library.Shared.FindAsync(revoked, Cancel));

        library.Clock.Now += TimeSpan.FromHours(1);
        var leaked = (await library.Links.ForRigAsync(rig.Id, Cancel)).Single(link => link.Name == "leaked");
        Assert.True(await library.Links.RevokeAsync(leaked.Id, Cancel));

        Assert.Null(await library.Shared.FindAsync(expiring, Cancel));
        Assert.Null(await library.Shared.FindAsync(revoked, Cancel));
        Assert.Null(await library.Shared.FindAsync(ShareToken.Create(), Cancel));
        Assert.Null(await library.Shared.FindAsync("' OR 1=1 --", Cancel));
        Assert.NotNull(await library.Shared.FindAsync(deleted, Cancel));
        await library.Rigs.DeleteAsync(rig.Id, rig.Version, Cancel);
        Assert.Null(await library.Shared.FindAsync(deleted, Cancel));
        await library.Rigs.RestoreAsync(rig.Id, Cancel);
        Assert.NotNull(await library.Shared.FindAsync(deleted, Cancel));
    }

    [Fact]
    public async Task Of_the_leads_those_in_use_are_shown_and_what_was_noted_on_advice_is_not()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var problem = (A.Draft().With(A.Device("echo").Doing("delay")) with
        {
            Leads = [A.Lead("long") with { Kind = LeadKind.Instrument, Length = 9000.Mm, Count = 5 }, A.Lead("right") with { Kind = LeadKind.Instrument, Length = 6000.Mm, Count = 3 }],
        }).Problem();
        var kept = A.Rig().Placing("echo", 10, 20) with { Silenced = [new("late-buffer", [new("echo")], "nobody's business")] };
        var rig = await library.Rigs.AddAsync("Jam", "", problem, kept, Cancel);
        var token = await library.Links.CreateAsync(rig.Id, new("band"), Cancel);

        var shared = (await library.Shared.FindAsync(token, Cancel))!;

        // One from the guitar, one to the desk.
        Assert.Equal([("right", 2)], shared.Problem.Leads.Select(lead => (lead.Name, lead.Count)));
        Assert.Equal("", Assert.Single(shared.Rig.Silenced).Note);
    }

    [Fact]
    public async Task A_link_opens_for_whoever_holds_it_and_notes_when()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var rig = await JamRigAsync(library);
        var token = await library.Links.CreateAsync(rig.Id, new("band"), Cancel);
        await using var visitor = library.AsOwner(Guid.NewGuid());
        visitor.Clock.Now += TimeSpan.FromDays(2);

        Assert.Null((await library.Links.ForRigAsync(rig.Id, Cancel))[0].LastOpenedOn);
        Assert.Equal("Jam", (await visitor.Shared.FindAsync(token, Cancel))!.Name);
        Assert.Equal(new DateOnly(2027, 3, 8), (await library.Links.ForRigAsync(rig.Id, Cancel))[0].LastOpenedOn);
    }

    [Fact]
    public async Task Of_an_opening_the_day_is_kept_and_nothing_finer()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var rig = await JamRigAsync(library);
        var token = await library.Links.CreateAsync(rig.Id, new("band"), Cancel);
        await library.Shared.FindAsync(token, Cancel);
        var first = Belongings.Rows(library);
        Assert.Contains(first, row => row.Contains("LastOpenedOn=2027-03-06,", StringComparison.Ordinal));

        library.Clock.Now += TimeSpan.FromHours(3);
        await library.Shared.FindAsync(token, Cancel);
        Assert.Equal(first, Belongings.Rows(library));

        library.Clock.Now += TimeSpan.FromHours(1);
        await library.Shared.FindAsync(token, Cancel);
        Assert.Equal(new DateOnly(2027, 3, 7), (await library.Links.ForRigAsync(rig.Id, Cancel))[0].LastOpenedOn);
    }

    [Fact]
    public async Task Notes_and_values_of_what_is_in_the_rig_are_shown_where_they_were_ticked_and_there_alone()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var echo = await library.Gear.AddAsync(A.Device("echo").Doing("delay"), new(Note: "crackles", ValueCents: 12_500), Cancel);
        var home = await library.Gear.AddAsync(A.Device("fuzz"), new(Note: "never lend", ValueCents: 90_000), Cancel);
        var problem = A.Draft().With(echo.Item.Thing, home.Item.Thing).Needing("delay").Problem();
        var rig = await library.Rigs.AddAsync("Jam", "Ask Jo", problem, A.Rig().Placing(echo.Item.Thing.Id.Value, 10, 20), Cancel);
        await using var visitor = library.AsOwner(Guid.NewGuid());

        var plain = await OpenAsync(LinkContent.Plain);
        var notes = await OpenAsync(new(Notes: true));
        var values = await OpenAsync(new(Values: true, Places: true, Unit: LengthUnit.Inches));

        Assert.Equal(("", false, LengthUnit.Millimetres), (plain.Note, plain.ShowsPlaces, plain.Unit));
        Assert.Empty(plain.Belongings);
        Assert.Equal("Ask Jo", notes.Note);
        Assert.Equal(new(echo.Item.Thing.Id, "echo", "crackles", null), Assert.Single(notes.Belongings));
        Assert.Equal(("", true, LengthUnit.Inches), (values.Note, values.ShowsPlaces, values.Unit));
        Assert.Equal(new(echo.Item.Thing.Id, "echo", "", 12_500), Assert.Single(values.Belongings));

        async Task<SharedRig> OpenAsync(LinkContent content) =>
            (await visitor.Shared.FindAsync(await library.Links.CreateAsync(rig.Id, new("band", Content: content), Cancel), Cancel))!;
    }

    [Fact]
    public async Task A_frozen_link_shows_its_version_and_a_live_one_follows_the_rig()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var rig = await JamRigAsync(library);
        var live = await library.Links.CreateAsync(rig.Id, new("band"), Cancel);
        library.Clock.Now += TimeSpan.FromMinutes(1);
        var frozen = await library.Links.CreateAsync(rig.Id, new("desk", Frozen: 1), Cancel);
        var moved = rig.Item with { Rig = A.Rig().Placing("echo", 99, 20) };

        await library.Rigs.SaveAsync(rig with { Item = moved }, Cancel);

        Assert.Equal(99, (await library.Shared.FindAsync(live, Cancel))!.Rig.Placements[0].At.X.Value);
        Assert.Equal(10, (await library.Shared.FindAsync(frozen, Cancel))!.Rig.Placements[0].At.X.Value);
        Assert.Equal(new int?[] { 1, null }, (await library.Links.ForRigAsync(rig.Id, Cancel)).Select(link => link.Frozen));
        await Assert.ThrowsAsync<ArgumentException>(() => library.Links.CreateAsync(rig.Id, new("desk", Frozen: 7), Cancel));
    }

    [Fact]
    public async Task The_owner_can_look_at_what_a_link_would_show()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var rig = await JamRigAsync(library);
        var token = await library.Links.CreateAsync(rig.Id, new("band", Content: new(Notes: true)), Cancel);

        Assert.Equal(await library.Shared.FindAsync(token, Cancel), await library.Links.ShowAsync(rig.Id, new(Notes: true), cancel: Cancel), Same);
        Assert.Null(await library.Links.ShowAsync(rig.Id, LinkContent.Plain, version: 7, Cancel));
        Assert.Null(await library.Links.ShowAsync(Guid.NewGuid(), LinkContent.Plain, cancel: Cancel));

        // A checked problem is no record.
        static bool Same(SharedRig? one, SharedRig? other) => one! with { Problem = other!.Problem } == other && one.Problem.Draft == other.Problem.Draft;
    }

    private static Task<Stored<SavedRig>> JamRigAsync(LibraryOnDisk library) => library.Rigs.AddAsync(
        "Jam",
        "Ask Jo for the spare lead",
        (A.Draft().With(A.Device("echo").Doing("delay"), A.Device("fuzz").Doing("bird-song")).Banning("fuzz").Needing("delay", "bell") with { Roles = [new(new("bell"), "Bell"), new(new("bird-song"), "Bird song")] }).Problem(),
        A.Rig().Placing("echo", 10, 20),
        Cancel);
}
