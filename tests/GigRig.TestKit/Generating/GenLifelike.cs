using CsCheck;
using GigRig.Domain;
using GigRig.Domain.Events;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.TestKit.Building;

namespace GigRig.TestKit.Generating;

/// <summary>Boxes of the sizes they come in before a single-row or a double-row board, jacks and plugs where they usually are. Common practice, no source.</summary>
public static class GenLifelike
{
    private static readonly string[] Roles = ["tuner", "compressor", "drive", "drive.high", "equaliser", "boost", "modulation", "delay", "reverb"];

    private static readonly Gen<BodySize> Size =
        Gen.Select(Gen.OneOf(39, 50, 60, 66, 73, 94, 120, 145), Gen.OneOf(92, 94, 112, 120, 129), (width, depth) => new BodySize(width.Mm, depth.Mm, 55.Mm));

    public static Gen<RigProblemDraft> Night { get; } =
        from board in Gen.OneOf((460, 135), (300, 130), (420, 260))
        from count in Gen.Int[8, 14]
        from devices in GenMany.Each(count, Device)
        from weights in Gen.Int[1, 30].Array[Roles.Length]
        select A.Draft(A.Board(board.Item1, board.Item2)) with
        {
            Devices = devices,
            Event = A.Event() with { Needs = Roles.Select((role, i) => new Need(new(role), NeedLevel.Want, weights[i])).ToValueList() },
            Options = PlanOptions.Default with { Arrange = false, TimeLimit = TimeSpan.FromSeconds(20) },
        };

    private static Gen<Device> Device(int index) =>
        from size in Size
        from turns in Gen.OneOf<ValueList<Turn>>([Turn.None], [Turn.None], [Turn.None, Turn.Quarter, Turn.ThreeQuarter])
        from audio in Gen.OneOf(Side.Left, Side.Left, Side.Rear)
        from inAt in Gen.Int[10, 80]
        from outAt in Gen.Int[10, 80]
        from mass in Gen.Int[200, 900]
        from functions in Gen.Select(Gen.OneOf(Roles), Gen.Int[1, 5], (role, rating) => new RoleFunction(new(role), rating)).Array[1, 2]
        let width = size.Width.Value
        select A.Device($"box{index + 1}").Weighing(mass) with
        {
            Size = size,
            Turns = turns,
            Functions = [.. functions],
            Jacks = audio == Side.Left
                ? [new(JackUse.In, Side.Right, inAt.Mm), new(JackUse.Out, Side.Left, outAt.Mm), new(JackUse.Power, Side.Rear, (width / 2).Mm)]
                : [new(JackUse.In, Side.Rear, (width - 9).Mm), new(JackUse.Out, Side.Rear, 9.Mm), new(JackUse.Power, Side.Rear, (width / 2).Mm)],
        };
}
