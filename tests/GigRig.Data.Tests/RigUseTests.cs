using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.TestKit.Building;

namespace GigRig.Data.Tests;

public sealed class RigUseTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task What_stands_or_comes_along_is_used_and_what_was_only_on_offer_is_not()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var problem = A.Draft().With(A.Device("echo"), A.Device("stays home")).With(A.OffBoard("clip").Doing("tuner")).FedBy(A.Outlet("1")).Through(A.Amp()).Problem();
        var stored = await library.Rigs.AddAsync("Jam", "", problem, A.Rig().Placing("echo", 0, 0).Bringing("clip"), Cancel);

        Assert.Equal(["amp", "board", "clip", "echo", "supply"], (await library.Rigs.UsedAsync(Cancel)).Select(id => id.Value).Order());

        await library.Rigs.DeleteAsync(stored.Id, stored.Version, Cancel);
        Assert.Empty(await library.Rigs.UsedAsync(Cancel));
    }

    [Theory]
    [InlineData("", "")]
    [InlineData("{}", "[]")]
    [InlineData("{\"board\":7}", "{\"placements\":[1]}")]
    public void A_text_that_cannot_be_read_uses_nothing(string problem, string rig) => Assert.Empty(RigUse.In(problem, rig));
}
