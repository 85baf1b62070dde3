using CsCheck;
using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.TestKit.Building;

namespace GigRig.TestKit.Generating;

/// <summary>Whole questions of up to five devices on a small board: every rule is in reach, feasible or not, and every rig can be tried.</summary>
public static class GenProblem
{
    private static readonly Gen<PlugSizes> Plugs = Gen.Select(Gen.Int[0, 2], Gen.Int[0, 3], Gen.Int[0, 2], Gen.Int[0, 3], (out1, width1, out2, width2) =>
        new PlugSizes(new(out1.Mm, width1.Mm), new(out2.Mm, width2.Mm)));

    public static Gen<RigProblemDraft> SmallDraft { get; } = SmallDraftOf(5);

    public static Gen<RigProblem> Small { get; } = SmallOf(5);

    /// <param name="mostDevices">At most this many devices.</param>
    public static Gen<RigProblem> SmallOf(int mostDevices) => SmallDraftOf(mostDevices).Select(draft => draft.Problem());

    private static Gen<RigProblemDraft> SmallDraftOf(int mostDevices) =>
        from board in GenBoard.Small
        from supply in Gen.Frequency((4, GenSupply.Small.Select(supply => (Supply?)supply)), (1, Gen.Const((Supply?)null)))
        from adapters in GenSupply.Adapters
        from amp in Gen.Frequency((1, GenGear.Amp.Select(amp => (Amp?)amp)), (1, Gen.Const((Amp?)null)))
        from deviceCount in Gen.Int[0, mostDevices]
        from devices in GenMany.Each(deviceCount, GenGear.Device)
        from offBoardCount in Gen.Int[0, 2]
        from offBoard in GenMany.Each(offBoardCount, GenGear.OffBoard)
        from leadCount in Gen.Int[0, 3]
        from leads in GenMany.Each(leadCount, GenGear.Lead)
        from instrument in GenGear.Instrument
        from night in GenEvent.Small
        from titled in Gen.OneOf(Gen.Const((ValueList<RoleTitle>)[]), Gen.Const((ValueList<RoleTitle>)[new(new("bird-song"), "Bird song"), new(new("delay"), "Echo")]))
        from options in OptionsFor([.. devices.Select(device => device.Id), .. offBoard.Select(item => item.Id)])
        let draft = new RigProblemDraft
        {
            Board = board, Supply = supply, Adapters = adapters, Amp = amp, Devices = devices, OffBoard = offBoard, Leads = leads, Instrument = instrument, Event = night, Roles = titled, Options = options,
        }
        from withFixed in Gen.Frequency((5, Gen.Const(draft)), (1, GenFixed.Within(draft, 2)))
        select withFixed;

    /// <summary>Pins or bans one of the things now and then.</summary>
    private static Gen<PlanOptions> OptionsFor(ValueList<GearId> things) =>
        from plugs in Plugs
        from pick in Gen.Int[0, 4 * things.Count]
        from headroom in Gen.OneOf(0m, 0m, 0.25m)
        from spacing in Gen.OneOf(0, 0, 0, 2, 3)
        let pinned = pick < things.Count ? (ValueList<GearId>)[things[pick]] : []
        let banned = pick >= things.Count && pick < 2 * things.Count ? (ValueList<GearId>)[things[pick - things.Count]] : []
        select new PlanOptions { Plugs = plugs, Pin = pinned, Ban = banned, Headroom = headroom, SwitchSpacing = spacing.Mm };
}
