using System.Text.Json;
using GigRig.Domain.Units;
using GigRig.Web.Features.Gear.Quick;
using GigRig.Web.Tests.Hosting;
using Xunit;

namespace GigRig.Web.Tests.Features.Gear.Quick;

public sealed class QuickAddStateTests : IAsyncLifetime
{
    private Library library = null!;
    private QuickAddState state = null!;

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private QuickForm Open => state.Form.Lines[^1];

    public async ValueTask InitializeAsync()
    {
        library = await Library.OpenAsync();
        state = new(library.Batch, library.Roles);
        await state.LoadAsync(LengthUnit.Millimetres);
    }

    public ValueTask DisposeAsync() => library.DisposeAsync();

    [Fact]
    public async Task A_line_that_was_added_makes_way_for_an_empty_one_of_its_kind()
    {
        Open.Kind = "board";
        Open.Name = "Plank";
        Open.Size = "60 x 30 cm";

        Assert.True(await state.AddAsync(Open));

        Assert.True(Assert.Single(state.Form.Lines).IsBlank);
        Assert.Equal("board", Open.Kind);
        Assert.Single(await library.Gear.BoardsAsync(Cancel));
    }

    [Fact]
    public async Task A_refused_line_waits_above_while_the_next_goes_in()
    {
        var odd = Open;
        (odd.Name, odd.Size) = ("Odd", "huge");
        Assert.False(await state.AddAsync(odd));
        Assert.Same(odd, Assert.Single(state.Form.Lines));

        state.GoOn("device");
        Open.Name = "Meadow";
        Assert.True(await state.AddAsync(Open));

        Assert.Equal(2, state.Form.Lines.Count);
        Assert.Same(odd, state.Form.Lines[0]);
        Assert.True(Open.IsBlank);
        Assert.Contains("huge", odd.Errors.At("size"));
        Assert.False(state.Form.AllBlank);

        odd.Size = "small";
        Assert.True(await state.AddAsync(odd));
        Assert.True(Assert.Single(state.Form.Lines).IsBlank);
        Assert.Equal(["Meadow", "Odd"], (await library.Gear.DevicesAsync(Cancel)).Select(stored => stored.Item.Thing.Name));
    }

    [Fact]
    public void A_second_empty_line_is_never_opened()
    {
        state.GoOn("lead");
        Assert.Equal("device", Assert.Single(state.Form.Lines).Kind);
    }

    [Fact]
    public void A_line_that_is_left_out_goes_by_itself_and_can_be_put_back()
    {
        var odd = Open;
        odd.Name = "Odd";
        state.GoOn("device");
        Open.Name = "Half a";

        state.LeaveOut(state.Form.Lines[0]);

        Assert.Equal(["Half a", ""], state.Form.Lines.Select(line => line.Name));

        state.PutBack(odd);
        Assert.Equal(["Odd", "Half a", ""], state.Form.Lines.Select(line => line.Name));
    }

    [Fact]
    public void Kept_lines_come_back_in_order_with_their_faults_and_are_kept_on_with_every_change()
    {
        (Open.Name, Open.Size) = ("Odd", "huge");
        state.GoOn("lead");
        (Open.Name, Open.Size) = ("Patch", "6 x");
        var kept = JsonSerializer.Deserialize<QuickLines>(JsonSerializer.Serialize(state.Form))!;

        state.BringBack(kept);

        Assert.Equal([("device", "Odd"), ("lead", "Patch")], state.Form.Lines.Select(line => (line.Kind, line.Name)));
        Assert.NotNull(state.Form.Lines[0].Errors.At("size"));
        Assert.Null(Open.Errors.At("size"));
        var changes = 0;
        state.Form.Updated += () => changes++;
        state.Form.Lines[0].Changed("name");
        Assert.Equal(1, changes);
    }

    [Fact]
    public void Nothing_brought_back_is_an_empty_line()
    {
        Open.Kind = "amp";
        state.BringBack(new());
        Assert.True(Assert.Single(state.Form.Lines).IsBlank);
        Assert.Equal("amp", Open.Kind);
    }
}
