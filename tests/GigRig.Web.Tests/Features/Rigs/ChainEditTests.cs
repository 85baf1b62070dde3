using CsCheck;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.TestKit.Building;
using GigRig.Web.Features.Rigs;
using Xunit;

namespace GigRig.Web.Tests.Features.Rigs;

public sealed class ChainEditTests
{
    private static readonly RigProblem Problem = A.Draft().Through(A.Amp().Looped())
        .With(A.Device("a").Doing("tuner"), A.Device("b").Doing("drive"), A.Device("c").Doing("delay"), A.Device("d").Doing("reverb")).Problem();

    private static readonly Rig Saved = A.Rig().Placing("a", 0, 0).Placing("b", 0, 0).Placing("c", 0, 0).Placing("d", 0, 0).Chained("a b", "c d");

    [Fact]
    public void A_device_moves_a_step_within_its_part_and_to_the_end_of_the_other()
    {
        var edit = new ChainEdit(Problem, Saved);

        edit.MoveEarlier(new("b"));
        Assert.Equal(("b a", "c d"), Order(edit));
        edit.ToLoop(new("b"));
        Assert.Equal(("a", "c d b"), Order(edit));
        Assert.Equal("b is now 3 of 3 in the loop.", edit.Said);
        edit.MoveEarlier(new("b"));
        edit.ToFront(new("c"));
        Assert.Equal(("a c", "b d"), Order(edit));
    }

    [Fact]
    public void At_an_end_there_is_no_farther()
    {
        var edit = new ChainEdit(Problem, Saved);

        edit.MoveEarlier(new("a"));
        edit.MoveLater(new("d"));

        Assert.False(edit.Changed);
        Assert.True(edit.IsFirst(new("a")) && edit.IsLast(new("b")) && edit.IsFirst(new("c")) && edit.IsLast(new("d")));
    }

    [Fact]
    public void Put_back_is_as_saved_and_usual_is_as_planned()
    {
        var edit = new ChainEdit(Problem, Saved);

        edit.TakeUsual();
        Assert.Equal(("a b c d", ""), Order(edit));
        Assert.True(edit.IsUsual);
        edit.PutBack();
        Assert.False(edit.Changed);
    }

    [Fact]
    public void Nothing_goes_into_a_loop_the_amp_does_not_have()
    {
        var edit = new ChainEdit((Problem.Draft with { Amp = A.Amp() }).Problem(), Saved.Chained("a b"));

        edit.ToLoop(new("b"));

        Assert.Equal(("a b", ""), Order(edit));
    }

    [Fact]
    public void Whatever_is_moved_every_device_stays_in_the_chain_once() =>
        Gen.Select(Gen.OneOf("a", "b", "c", "d"), Gen.Int[0, 5], Gen.Int[0, 5]).Array[0, 12].Sample(moves =>
        {
            var edit = new ChainEdit(Problem, Saved);
            foreach (var (id, move, before) in moves)
                Do(edit, new(id), move, before);

            Assert.Equal(["a", "b", "c", "d"], edit.Chain.Front.Concat(edit.Chain.Loop).Select(id => id.Value).Order());
        });

    private static void Do(ChainEdit edit, GearId id, int move, int before)
    {
        switch (move)
        {
            case 0: edit.MoveEarlier(id); break;
            case 1: edit.MoveLater(id); break;
            case 2: edit.ToLoop(id); break;
            case 3: edit.ToFront(id); break;
            default: edit.MoveTo(id, (GigRig.Domain.Wiring.ChainPart)(move - 4), before); break;
        }
    }

    private static (string Front, string Loop) Order(ChainEdit edit) => (string.Join(' ', edit.Chain.Front), string.Join(' ', edit.Chain.Loop));
}
