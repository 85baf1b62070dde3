using CsCheck;
using GigRig.Domain;
using GigRig.Domain.Events;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;

namespace GigRig.TestKit.Generating;

/// <summary>Questions in which many things compete for little, so that the best rig is seldom the obvious one.</summary>
public static class GenContest
{
    /// <summary>Up to six passive devices before a board that holds about half of them: space decides.</summary>
    public static Gen<RigProblemDraft> Crowded { get; } =
        from size in Gen.Select(Gen.Int[4, 8], Gen.Int[3, 6])
        from draft in Wanting(Gen.Int[4, 6], size.Item1, size.Item2)
        select draft with { Devices = draft.Devices.Select(device => device with { Power = null }).ToValueList(), Supply = null };

    /// <summary>Up to six passive devices deeper than half the board, plugs at their sides: what stands next to what decides.</summary>
    public static Gen<RigProblemDraft> InARow { get; } =
        from size in Gen.Select(Gen.Int[8, 16], Gen.Int[4, 5])
        from draft in Wanting(Gen.Int[4, 6], size.Item1, size.Item2)
        let deep = draft.Devices.Select(device => device with { Power = null, Size = device.Size with { Depth = Math.Max(3, device.Size.Depth.Value).Mm } }).ToValueList()
        from jacks in GenMany.Each(deep.Count, i => GenGear.JackOf(deep[i].Size).Array[1, 3])
        from plugs in Gen.Int[1, 2].Array[4]
        select draft with
        {
            Devices = deep.Select((device, i) => device with { Jacks = [.. jacks[i]] }).ToValueList(),
            Supply = null,
            Options = draft.Options with { Plugs = new(new(plugs[0].Mm, (2 * plugs[1]).Mm), new(plugs[2].Mm, (2 * plugs[3]).Mm)) },
        };

    /// <summary>Up to five powered devices on a board with room to spare: the outlets decide.</summary>
    public static Gen<RigProblemDraft> Hungry { get; } =
        from draft in Wanting(Gen.Int[2, 5], width: 22, depth: 4)
        from outlets in Gen.Int[1, 4].SelectMany(count => GenMany.Each(count, GenSupply.Outlet))
        from supply in GenSupply.Small
        from adapters in Gen.Int[0, 3].Array[4]
        select draft with
        {
            Board = draft.Board with { Rails = [], KeepOuts = [], ClearanceOver = null },
            Supply = supply with { Mount = SupplyMount.Off, Size = null, Outlets = outlets },
            Adapters = new(adapters[0], adapters[1], adapters[2], adapters[3]),
            Devices = draft.Devices.Select((device, i) => Thirsty(device, mayHaveBattery: i == 0)).ToValueList(),
        };

    /// <summary>The same with two kinds of bodies, doing what one of two does, so that some are alike; each may also be wanted for a role of its own.</summary>
    public static Gen<RigProblemDraft> Alike { get; } =
        from draft in Crowded
        from models in Gen.Int[0, 1].Array[draft.Devices.Count]
        from talents in Gen.Int[0, 1].Array[draft.Devices.Count]
        from weight in Gen.Int[0, 3]
        let devices = draft.Devices.Select((device, i) => draft.Devices[models[i]] with
        {
            Id = device.Id,
            Functions = [.. draft.Devices[talents[i]].Functions, new(OwnRole(i))],
        }).ToValueList()
        select draft with
        {
            Devices = devices,
            Event = draft.Event with
            {
                Needs = [.. draft.Event.Needs, .. talents.Select((talent, i) => new Need(OwnRole(i), NeedLevel.Want, weight + talent)).Where(need => need.Weight > 0)],
            },
        };

    /// <summary>Too large to try everything: up to 20 devices on up to 16 × 10 mm.</summary>
    public static Gen<RigProblemDraft> Larger { get; } =
        from size in Gen.Select(Gen.Int[10, 16], Gen.Int[5, 10])
        from draft in Wanting(Gen.Int[12, 20], size.Item1, size.Item2)
        from supply in GenSupply.Small
        select draft with { Supply = supply };

    /// <summary>Small enough to try everything, of every kind.</summary>
    public static Gen<RigProblemDraft> Mixed { get; } = Gen.OneOf(GenProblem.SmallDraft, Crowded, InARow, Hungry);

    /// <summary>The same kinds with one to three things fixed somewhere.</summary>
    public static Gen<RigProblemDraft> AroundFixed { get; } = Gen.OneOf(Crowded, InARow, GenProblem.SmallDraft).SelectMany(draft => GenFixed.Within(draft, 3));

    private static Device Thirsty(Device device, bool mayHaveBattery) => device with
    {
        Turns = [Turn.None],
        Jacks = [],
        Power = device.Power is { } need ? need with { Battery = mayHaveBattery && need.Battery } : new PowerNeed(9.V, 12.V, 50.MilliA),
    };

    /// <summary>Everything there is to want is wanted, seldom more than that.</summary>
    private static Gen<RigProblemDraft> Wanting(Gen<int> counts, int width, int depth) =>
        from board in GenBoard.Small
        from count in counts
        from devices in GenMany.Each(count, GenGear.Device)
        from draft in GenProblem.SmallDraft
        from weights in Gen.Int[1, 9].Array[Roles.Count]
        from must in Gen.Int[0, 4 * Roles.Count]
        select draft with
        {
            Board = board with
            {
                Width = width.Mm,
                Depth = depth.Mm,
                Rails = board.Rails.Where(rail => rail.To.Value <= depth).ToValueList(),
                KeepOuts = board.KeepOuts.Where(k => k.Right.Value <= width && k.Rear.Value <= depth).ToValueList(),
            },
            Devices = devices,
            Event = draft.Event with
            {
                Needs = Roles.Select((role, i) => new Need(role, i == must ? NeedLevel.Must : NeedLevel.Want, weights[i])).ToValueList(),
                Sounds = draft.Event.Sounds.Select(sound => sound with { Level = NeedLevel.Want }).ToValueList(),
            },
            Options = draft.Options with { Pin = [], Ban = [], Fixed = [] },
        };

    private static Role OwnRole(int device) => new($"own.{(char)('a' + device)}");

    private static ValueList<Role> Roles => [new("drive"), new("drive.high"), new("delay"), new("reverb"), new("tuner")];
}
