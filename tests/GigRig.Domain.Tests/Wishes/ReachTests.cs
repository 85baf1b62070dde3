using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.Domain.Wishes;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Wishes;

public sealed class ReachTests
{
    /// <summary>On a board 600 wide; the echo does a need and a sound, the hall the sound, the fuzz nothing.</summary>
    private static readonly RigProblem Problem = A.Draft()
        .With(A.Device("echo").WithSwitch(50, 20).Doing("delay"), A.Device("hall").WithSwitch(50, 20).WithSwitch(50, 80).Doing("reverb"), A.Device("fuzz").WithSwitch(50, 20))
        .Needing("delay").WantingSound("wash", 3, "delay", "reverb")
        .Problem();

    [Fact]
    public void Counts_the_way_to_a_switch_once_for_each_need_and_sound_its_device_does()
    {
        // The echo's switch is 50 to the left of the middle and 20 back, the hall's nearest 250 to the right and 120 back. Alone the echo plays no wash.
        Assert.Equal(2 * (50 + (2 * 20)), Of(A.Rig().Placing("echo", 200, 0)));
        Assert.Equal((2 * 2 * (50 + (2 * 20))) + (2 * (250 + (2 * 120))), Of(A.Rig().Placing("echo", 200, 0).Placing("hall", 500, 100)));
    }

    [Fact]
    public void Neither_what_does_nothing_nor_what_has_no_switch_counts()
    {
        Assert.Equal(0, Of(A.Rig().Placing("fuzz", 0, 0)));
        Assert.Equal(0, Reach.Of(A.Draft().With(A.Device("echo").Doing("delay")).Needing("delay").Problem(), A.Rig().Placing("echo", 0, 0), Coverage.Of(Problem, A.Rig())));
    }

    [Fact]
    public void The_middle_of_the_front_edge_is_no_way_at_all() => Assert.Equal(0, Reach.Way(new(300.Mm, default), Problem.Board.Width));

    private static long Of(Rig rig) => Reach.Of(Problem, rig, Coverage.Of(Problem, rig));
}
