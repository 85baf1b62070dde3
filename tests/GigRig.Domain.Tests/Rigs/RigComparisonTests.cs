using CsCheck;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.TestKit.Building;
using GigRig.TestKit.Generating;
using Xunit;

namespace GigRig.Domain.Tests.Rigs;

public sealed class RigComparisonTests
{
    private static readonly RigProblem Problem = A.Draft()
        .With(A.Device("echo"), A.Device("fuzz"), A.Device("hall"), A.Device("trem"))
        .With(A.OffBoard("clip"))
        .FedBy(A.Outlet("1"), A.Outlet("2"))
        .Problem();

    private static readonly Gen<(RigProblem Problem, Rig First, Rig Second)> TwoRigs =
        from problem in GenProblem.Small
        from first in GenRig.For(problem)
        from second in Gen.Frequency((1, GenRig.For(problem)), (3, GenMutation.Of(problem, first)))
        select (problem, first, second);

    [Fact]
    public void What_moved_came_went_and_is_fed_otherwise_is_named()
    {
        var first = A.Rig().Placing("echo", 0, 0).Placing("fuzz", 100, 0).Bringing("clip").Feeding("echo", "1");
        var second = A.Rig().Placing("echo", 50, 0).Placing("hall", 100, 0).Feeding("echo", "2");

        var swap = RigComparison.Of(Problem, first, Problem, second);

        Assert.Equal(["fuzz", "clip"], swap.Went.Select(id => id.Value));
        Assert.Equal(["hall"], swap.Came.Select(id => id.Value));
        Assert.Equal(new(new("echo"), first.Placements[0], second.Placements[0]), Assert.Single(swap.Moved));
        Assert.Equal(new(new("echo"), first.HookUp[0], second.HookUp[0]), Assert.Single(swap.Refed));
        Assert.Empty(swap.Reordered);
        Assert.Equal((false, false, false), (swap.OtherBoard, swap.OtherSupply, swap.IsEmpty));
    }

    [Fact]
    public void Of_an_order_as_few_as_possible_are_moved_and_each_says_what_it_comes_after()
    {
        var first = A.Rig().Placing("echo", 0, 0).Placing("fuzz", 100, 0).Placing("hall", 200, 0).Placing("trem", 300, 0);

        var swap = RigComparison.Of(Problem, first.Chained("echo fuzz hall trem"), Problem, first.Chained("fuzz hall echo", "trem"));

        Assert.Equal(
            [new(new("echo"), WasInLoop: false, IsInLoop: false, After: new GearId("hall")), new(new("trem"), WasInLoop: false, IsInLoop: true, After: null)],
            swap.Reordered);
    }

    [Fact]
    public void On_another_board_with_another_supply_everything_stands_and_is_fed_anew()
    {
        var rig = A.Rig().Placing("echo", 0, 0).Feeding("echo", "1").Placing("fuzz", 100, 0).OnBattery("fuzz");
        var other = (Problem.Draft with
        {
            Board = Problem.Board with { Id = new("wide") },
            Supply = Problem.Supply! with { Id = new("brick") },
        }).Problem();

        var swap = RigComparison.Of(Problem, rig, other, rig);

        Assert.Equal((true, true), (swap.OtherBoard, swap.OtherSupply));
        Assert.Equal([Problem.Board.Id, Problem.Supply!.Id], swap.Went);
        Assert.Equal(["wide", "brick"], swap.Came.Select(id => id.Value));
        Assert.Equal(["echo", "fuzz"], swap.Moved.Select(moved => moved.Id.Value));
        Assert.Equal(["echo"], swap.Refed.Select(refed => refed.Id.Value));
    }

    [Fact]
    public void A_rig_differs_from_itself_in_nothing() =>
        TwoRigs.Sample(rigs => RigComparison.Of(rigs.Problem, rigs.First, rigs.Problem, rigs.First).IsEmpty);

    [Fact]
    public void The_way_back_is_the_way_there_turned_round() => TwoRigs.Sample(rigs =>
    {
        var there = RigComparison.Of(rigs.Problem, rigs.First, rigs.Problem, rigs.Second);
        var back = RigComparison.Of(rigs.Problem, rigs.Second, rigs.Problem, rigs.First);

        Assert.Equal(there.Went, back.Came);
        Assert.Equal(there.Came, back.Went);
        Assert.Equal(there.Moved.Select(moved => (moved.Id, moved.From, moved.To)).ToHashSet(), back.Moved.Select(moved => (moved.Id, moved.To, moved.From)).ToHashSet());
        Assert.Equal(there.Refed.Select(refed => (refed.Id, refed.From, refed.To)).ToHashSet(), back.Refed.Select(refed => (refed.Id, refed.To, refed.From)).ToHashSet());
        Assert.Equal(there.Reordered.Count, back.Reordered.Count);
    });

    /// <summary>Does what the list says, with nothing but the list and the first rig, and looks whether the second stands there.</summary>
    [Fact]
    public void Doing_what_it_says_turns_the_first_rig_into_the_second() =>
        (from problem in GenProblem.Small from first in GenRig.For(problem) from second in GenRig.For(problem) select (problem, first, second)).Sample(rigs =>
        {
            var swap = RigComparison.Of(rigs.problem, rigs.first, rigs.problem, rigs.second);
            var stands = rigs.first.Placements.Where(placement => !swap.Went.Contains(placement.Id)).ToDictionary(placement => placement.Id);
            foreach (var moved in swap.Moved.Where(moved => stands.ContainsKey(moved.Id)))
                stands[moved.Id] = moved.To;
            foreach (var came in rigs.second.Placements.Where(placement => swap.Came.Contains(placement.Id)))
                stands[came.Id] = came;

            Assert.Equal(rigs.second.Placements.OrderBy(placement => placement.Id.Value), stands.Values.OrderBy(placement => placement.Id.Value));
            Assert.Equal(InOrder(rigs.second.Chain.Front), Replugged(rigs.first.Chain.Front, rigs.second.Chain.Front, loop: false));
            Assert.Equal(InOrder(rigs.second.Chain.Loop), Replugged(rigs.first.Chain.Loop, rigs.second.Chain.Loop, loop: true));

            IEnumerable<GearId> InOrder(ValueList<GearId> part) => part;

            // Takes out what went and what is plugged elsewhere, then puts each thing after the one it comes after.
            List<GearId> Replugged(ValueList<GearId> part, ValueList<GearId> wanted, bool loop)
            {
                var left = part.Where(id => !swap.Went.Contains(id) && swap.Reordered.All(thing => thing.Id != id)).ToList();
                foreach (var (index, id) in wanted.Index().Where(place => swap.Came.Contains(place.Item) || swap.Reordered.Any(thing => thing.Id == place.Item && thing.IsInLoop == loop)))
                    left.Insert(index == 0 ? 0 : left.IndexOf(wanted[index - 1]) + 1, id);
                return left;
            }
        });

    [Fact]
    public void No_shorter_list_of_replugged_things_would_do() =>
        Gen.Int[1, 6].SelectMany(count => Gen.Shuffle(Enumerable.Range(0, count).ToArray())).Sample(order =>
        {
            var ids = order.Select(number => new GearId($"{number}")).ToList();
            var (first, second) = (A.Rig() with { Chain = new(ids.OrderBy(id => id.Value).ToValueList(), []) }, A.Rig() with { Chain = new(ids.ToValueList(), []) });

            // Every way to leave some in place, tried one by one.
            var mostLeft = Enumerable.Range(0, 1 << order.Length)
                .Select(mask => order.Where((_, index) => (mask & (1 << index)) != 0).ToList())
                .Where(left => left.SequenceEqual(left.Order()))
                .Max(left => left.Count);

            Assert.Equal(order.Length - mostLeft, RigComparison.Of(Problem, first, Problem, second).Reordered.Count);
        });
}
