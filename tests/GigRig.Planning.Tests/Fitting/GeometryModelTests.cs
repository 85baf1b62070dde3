using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.TestKit.Building;

namespace GigRig.Planning.Tests.Fitting;

public sealed class GeometryModelTests
{
    [Fact]
    public async Task A_plug_may_lie_farther_out_than_the_board_is_wide()
    {
        // On a board of 10 mm the long audio plug, cut by the power plug it overlaps, begins 60 mm beyond its left edge or, turned, its front.
        var draft = A.Draft(A.Board(10, 10).Overhanging(200, 0, 200, 0))
            .With(A.Device("echo").Sized(10, 10).Turning(Turn.None, Turn.ThreeQuarter).WithJack(JackUse.Power, Side.Left, 5).WithJack(JackUse.In, Side.Left, 5).Doing("delay"))
            .Needing("delay");
        var stretched = draft with { Options = draft.Options with { Plugs = new(new(100.Mm, 4.Mm), new(60.Mm, 8.Mm)) } };

        var outcome = await Ask.Planner(stretched, PlannerOptions.Default with { RoundsBeforeGeometry = 0 });

        Assert.IsType<PlanOutcome.Proposed>(outcome);
    }
}
