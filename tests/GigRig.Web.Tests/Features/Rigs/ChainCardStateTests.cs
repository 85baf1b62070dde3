using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.TestKit.Building;
using GigRig.Web.Features.Rigs;
using GigRig.Web.Tests.Hosting;
using Xunit;

namespace GigRig.Web.Tests.Features.Rigs;

public sealed class ChainCardStateTests : IAsyncLifetime
{
    private static readonly RigProblem Problem = A.Draft().Through(A.Amp()).With(A.Device("drive").Doing("drive"), A.Device("echo").Doing("delay")).Problem();

    private Library library = null!;

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync() => library = await Library.OpenAsync();

    public ValueTask DisposeAsync() => library.DisposeAsync();

    [Fact]
    public async Task An_order_is_stored_when_it_is_saved_and_not_before()
    {
        var (state, id) = await ShownAsync();

        state.Edit!.MoveEarlier(new("echo"));
        Assert.Equal("drive echo", await FrontAsync(id));
        Assert.True(await state.SaveOrderAsync());

        Assert.Equal("echo drive", await FrontAsync(id));
        Assert.False(state.Edit.Changed);
    }

    [Fact]
    public async Task Advice_is_silenced_with_a_note_and_heard_again()
    {
        var (state, id) = await ShownAsync();
        state.Edit!.MoveEarlier(new("echo"));
        var advice = Assert.Single(state.Advice).Advice;

        Assert.True(await state.SilenceAsync(advice, " I want it to smear "));
        Assert.Equal("I want it to smear", Assert.Single(state.Advice).Silenced?.Note);
        Assert.Single((await library.Rigs.FindAsync(id, Cancel))!.Item.Rig.Silenced);

        Assert.True(await state.HearAgainAsync(advice));
        Assert.Null(Assert.Single(state.Advice).Silenced);
    }

    [Fact]
    public async Task Lengths_are_kept_with_the_rig_and_refused_beyond_their_limits()
    {
        var (state, id) = await ShownAsync();

        Assert.True(await state.SaveLengthsAsync(WiringAllowances.Usual with { ToAmp = 9000.Mm }));
        Assert.Equal(9000.Mm, (await library.Rigs.FindAsync(id, Cancel))!.Item.Problem.Options.Wiring.ToAmp);
        Assert.False(await state.SaveLengthsAsync(WiringAllowances.Usual with { Slack = 1001.Mm }));
        Assert.Equal("The slack of each lead is 1001 mm; give 0 to 1000 mm.", state.Fault);
    }

    [Fact]
    public async Task Over_a_newer_rig_nothing_is_saved_and_nothing_moved_is_lost()
    {
        var (state, id) = await ShownAsync();
        state.Edit!.MoveEarlier(new("echo"));
        var other = (await library.Rigs.FindAsync(id, Cancel))!;
        await library.Rigs.RenameAsync(id, other.Version, "Saturday", "", Cancel);

        Assert.False(await state.SaveOrderAsync());

        Assert.NotEqual("", state.Fault);
        Assert.True(state.Edit.Changed);
        Assert.Equal("drive echo", await FrontAsync(id));
    }

    private async Task<(ChainCardState State, Guid Id)> ShownAsync()
    {
        var saved = await library.Rigs.AddAsync("Friday", "", Problem, A.Rig().Placing("drive", 0, 0).Placing("echo", 200, 0), Cancel);
        var state = new ChainCardState(library.Rigs);
        state.Show(saved);
        return (state, saved.Id);
    }

    private async Task<string> FrontAsync(Guid id) => string.Join(' ', (await library.Rigs.FindAsync(id, Cancel))!.Item.Rig.Chain.Front);
}
