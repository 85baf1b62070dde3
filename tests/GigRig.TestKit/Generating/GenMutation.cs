using CsCheck;
using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;

namespace GigRig.TestKit.Generating;

/// <summary>A rig with one or two things about it changed: moved, turned, dropped, doubled, rewired, set otherwise, strange.</summary>
public static class GenMutation
{
    private static readonly GearId Ghost = new("ghost");

    public static Gen<Rig> Of(RigProblem problem, Rig rig) => Once(problem, rig).SelectMany(once => Gen.Frequency((1, Gen.Const(once)), (1, Once(problem, once))));

    private static Gen<Rig> Once(RigProblem problem, Rig rig) =>
        Gen.OneOf(OfPlacements(problem, rig), OfHookUp(problem, rig), OfChain(rig), OfTheRest(problem, rig));

    private static Gen<Rig> OfPlacements(RigProblem problem, Rig rig) => rig.Placements.Count == 0
        ? Gen.Const(rig with { Placements = [new(Ghost, default)] })
        : from index in Gen.Int[0, rig.Placements.Count - 1]
          let old = rig.Placements[index]
          from changed in Gen.OneOf(
              Gen.Select(Gen.Int[-2, 2], Gen.Int[-2, 2], (x, y) => (ValueList<Placement>)[old with { At = new(old.At.X + x.Mm, old.At.Y + y.Mm) }]),
              Gen.Enum<Turn>().Select(turn => (ValueList<Placement>)[old with { Turn = turn }]),
              Gen.Const<ValueList<Placement>>([]),
              GenRig.Standing(old.Id, problem.Board, [old.Turn]).Select(again => (ValueList<Placement>)[old, again]),
              Gen.Const<ValueList<Placement>>([old with { Id = Ghost }]))
          select rig with { Placements = Replaced(rig.Placements, index, changed) };

    private static Gen<Rig> OfHookUp(RigProblem problem, Rig rig) => rig.HookUp.Count == 0
        ? Gen.Const(rig with { HookUp = [new(Ghost, ["9"], OutletJoin.Single, 9.V, [9.V])] })
        : from index in Gen.Int[0, rig.HookUp.Count - 1]
          from changed in Rewired(problem, rig.HookUp[index])
          select rig with { HookUp = Replaced(rig.HookUp, index, changed) };

    private static Gen<ValueList<Feed>> Rewired(RigProblem problem, Feed old) => Gen.OneOf(
        Gen.OneOf<ValueList<Feed>>(
            [],
            [old, old],
            [old with { Reversed = !old.Reversed }],
            [Feed.FromBattery(old.Device)],
            [old with { Settings = [.. old.Settings, 9.V] }],
            [old with { Outlets = [.. old.Outlets.Skip(1), "9"] }]),
        Gen.Enum<OutletJoin>().Select(join => (ValueList<Feed>)[old with { Join = join }]),
        Gen.OneOf(9.V, 12.V, 18.V).Select(volts => (ValueList<Feed>)[old with { Volts = volts, Settings = old.Settings.Select(_ => volts).ToValueList() }]),
        problem.Supply is { Outlets: { Count: > 0 } outlets } ? GenRig.WiredFeed(old.Device, outlets).Select(feed => (ValueList<Feed>)[feed]) : Gen.Const<ValueList<Feed>>([]));

    private static Gen<Rig> OfChain(Rig rig)
    {
        var (front, loop) = (rig.Chain.Front, rig.Chain.Loop);
        return Gen.OneOf(
            new Chain(front.Skip(1).ToValueList(), loop),
            new Chain(front, loop.Skip(1).ToValueList()),
            new Chain(front.Skip(1).ToValueList(), [.. front.Take(1), .. loop]),
            new Chain([.. front, .. front.Take(1)], loop),
            new Chain([.. front, Ghost], loop),
            new Chain(front.Reverse().ToValueList(), loop)).Select(chain => rig with { Chain = chain });
    }

    private static Gen<Rig> OfTheRest(RigProblem problem, Rig rig) => Gen.OneOf(
        rig with { OffBoard = [.. problem.OffBoard.Select(item => item.Id)] },
        rig with { OffBoard = [] },
        rig with { OffBoard = [.. rig.OffBoard, .. rig.OffBoard.Take(1)] },
        rig with { OffBoard = [.. rig.OffBoard, Ghost] },
        rig with { Supply = null },
        rig with { Supply = new(new("supply"), default) },
        rig with { Supply = new(Ghost, default) },
        rig with { Supply = rig.Supply is { } supply ? supply with { Turn = Turn.Half } : null });

    private static ValueList<T> Replaced<T>(ValueList<T> items, int index, ValueList<T> by) => [.. items.Take(index), .. by, .. items.Skip(index + 1)];
}
