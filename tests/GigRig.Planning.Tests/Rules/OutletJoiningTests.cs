using GigRig.Domain.Rigs;
using GigRig.TestKit.Building;

namespace GigRig.Planning.Tests.Rules;

public sealed class OutletJoiningTests
{
    [Fact]
    public async Task As_many_outlets_are_joined_in_parallel_as_the_draw_takes_and_the_leads_allow()
    {
        var best = await Ask.Best(Hungry().OwningAdapters(parallel: 4));

        var feed = Assert.Single(best.Rig.HookUp);
        Assert.Equal((OutletJoin.Parallel, 5), (feed.Join, feed.Outlets.Distinct().Count()));
    }

    [Fact]
    public async Task One_parallel_lead_too_few_and_the_device_cannot_be_fed() =>
        await Ask.Impossible(Hungry().OwningAdapters(parallel: 3));

    /// <summary>450 mA before five isolated outlets of 100 mA.</summary>
    private static RigProblemDraft Hungry() => A.Draft()
        .With(A.Device("rack").Drawing(450).Doing("delay"))
        .Needing("delay")
        .FedBy([.. Enumerable.Range(1, 5).Select(i => A.Outlet($"{i}").Giving(100))]);
}
