using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Units;
using GigRig.Domain.Wishes;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Wishes;

public sealed class PatchLeadsTests
{
    private static readonly Device First = A.Device("first").WithAudioJacks();
    private static readonly Device Second = A.Device("second").WithAudioJacks();
    private static readonly Device Third = A.Device("third").WithAudioJacks();

    [Fact]
    public void Goes_from_out_plug_tip_to_in_plug_tip_along_and_across()
    {
        var problem = A.Draft().With(First, Second).Problem();
        // Out of the first: (300 − 15, 50). In of the second: (0 + 100 + 15, 100 + 50). 170 along, 100 across.
        Assert.Equal(270.Mm, PatchLeads.Length(problem, A.Rig().Placing("first", 300, 0).Placing("second", 0, 100)));
    }

    [Fact]
    public void Turned_devices_count_from_where_their_jacks_come_to_lie()
    {
        var problem = A.Draft().With(First.Turning(Turn.Half), Second).Problem();
        // Turned half, the first's out is at its right: (115, 50). In of the second: (315, 50).
        Assert.Equal(200.Mm, PatchLeads.Length(problem, A.Rig().Placing("first", 0, 0, Turn.Half).Placing("second", 200, 0)));
    }

    [Fact]
    public void The_loop_is_a_chain_of_its_own()
    {
        var problem = A.Draft().Through(A.Amp().Looped()).With(First, Second, Third).Problem();
        var rig = A.Rig().Placing("first", 300, 0).Placing("second", 0, 100).Placing("third", 300, 100).Chained("first second", "third");
        Assert.Equal(270.Mm, PatchLeads.Length(problem, rig));
    }

    [Fact]
    public void Without_jacks_it_counts_from_the_middle_of_the_body()
    {
        var problem = A.Draft().With(A.Device("a").Sized(51, 31), A.Device("b").Sized(10, 10)).Problem();
        // (25, 15) to (105, 5).
        Assert.Equal(90.Mm, PatchLeads.Length(problem, A.Rig().Placing("a", 0, 0).Placing("b", 100, 0)));
    }

    [Fact]
    public void Devices_that_stand_nowhere_are_passed_over()
    {
        var problem = A.Draft().With(A.Device("a"), A.Device("b"), A.Device("c")).Problem();
        Assert.Equal(200.Mm, PatchLeads.Length(problem, A.Rig().Placing("a", 0, 0).Placing("c", 200, 0).Chained("a b c ghost")));
    }
}
