using GigRig.Domain.Events;
using GigRig.Web.Features.Events;
using GigRig.Web.Tests.Hosting;
using Xunit;

namespace GigRig.Web.Tests.Features.Events;

public sealed class EventListStateTests : IAsyncLifetime
{
    private Library library = null!;
    private EventListState state = null!;

    public async ValueTask InitializeAsync()
    {
        library = await Library.OpenAsync();
        state = new(library.Events, library.Roles);
        await state.LoadAsync();
    }

    public ValueTask DisposeAsync() => library.DisposeAsync();

    [Fact]
    public void The_three_ready_ones_are_offered() =>
        Assert.Equal(["Jam night", "Van tour", "Wedding function"], state.Offered.Select(type => type.Name));

    [Fact]
    public async Task A_ready_one_that_was_added_is_not_offered_again()
    {
        await state.AddReadyAsync(ReadyEventTypes.VanTour);

        Assert.Equal(["Jam night", "Wedding function"], state.Offered.Select(type => type.Name));
        Assert.Equal(ReadyEventTypes.VanTour, Assert.Single(state.All).Item);
    }

    [Fact]
    public async Task A_copy_is_the_same_under_a_name_of_its_own()
    {
        await state.AddReadyAsync(ReadyEventTypes.JamNight);

        await state.CopyAsync(ReadyEventTypes.JamNight);
        await state.CopyAsync(ReadyEventTypes.JamNight);

        Assert.Equal(["Jam night", "Jam night (copy 2)", "Jam night (copy)"], state.All.Select(type => type.Item.Name).Order(StringComparer.Ordinal));
        Assert.All(state.All, type => Assert.Equal(ReadyEventTypes.JamNight.Needs, type.Item.Needs));
    }

    [Fact]
    public async Task A_delete_can_be_undone()
    {
        await state.AddReadyAsync(ReadyEventTypes.JamNight);
        var jam = state.All[0];

        await state.DeleteAsync(jam);
        Assert.Empty(state.All);
        Assert.Equal([jam], state.Deleted.Latest);

        await state.RestoreAsync(jam);
        Assert.Single(state.All);
        Assert.Empty(state.Deleted.Latest);
    }
}
