using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Units;
using GigRig.TestKit.Building;

namespace GigRig.Planning.Tests.Rules;

public sealed class PlugOverhangTests
{
    [Fact]
    public async Task A_plug_that_does_not_stand_out_needs_no_overhang()
    {
        var draft = A.Draft(A.Board(100, 100).Overhanging(0, 0, 0, 0)).With(A.Device("echo").WithJack(JackUse.In, Side.Left, 0).Doing("delay")).Needing("delay");

        await Ask.Best(draft with { Options = draft.Options with { Plugs = new(new(0.Mm, 16.Mm), new(0.Mm, 12.Mm)) } });
    }
}
