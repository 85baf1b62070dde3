using CsCheck;
using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.TestKit.Building;

namespace GigRig.TestKit.Generating;

/// <summary>Random questions of random gear, and random rigs that speak of that gear only. They fit, are fed and play by chance alone.</summary>
public static class AnyRig
{
    public static Gen<RigProblem> Problem { get; } =
        from things in Gen.Select(AnyBoard.Board, AnyBoard.Supply, AnyGear.Amp, AnyGear.Adapters, AnyEvent.EventType)
        from devices in AnyGear.Device.ListOf(4)
        from offBoard in AnyGear.OffBoard.ListOf(2)
        from leads in AnyGear.Lead.ListOf(3)
        from instrument in AnyGear.Instrument
        from wiring in Gen.Int[0, 1000].Array[5]
        from headroom in Gen.Int[0, 50]
        select new RigProblemDraft
        {
            Board = things.Item1,
            Supply = things.Item2,
            Amp = things.Item3,
            Adapters = things.Item4,
            Event = things.Item5,
            Devices = devices,
            OffBoard = offBoard,
            Leads = leads,
            Instrument = instrument,
            Options = PlanOptions.Default with { Headroom = headroom / 100m, Ban = devices.Take(1).Select(device => device.Id).ToValueList(), Wiring = Wiring(wiring) },
        }.Problem();

    public static Gen<Rig> Of(RigProblem problem) =>
        from places in Gen.Select(Gen.Int[-100, 3000], Gen.Int[-100, 3000], Gen.Enum<Domain.Geometry.Turn>()).Array[problem.Devices.Count]
        from reversed in Gen.Bool
        from note in AnyValue.Name
        let ids = problem.Devices.Select(device => device.Id).ToList()
        select new Rig(
            ids.Zip(places, (id, place) => new Placement(id, new(place.Item1.Mm, place.Item2.Mm), place.Item3)).ToValueList(),
            null,
            problem.OffBoard.Select(item => item.Id).ToValueList(),
            ids.Select(id => FeedOf(problem, id, reversed)).ToValueList(),
            new Chain([.. ids.Take(2)], [.. ids.Skip(2)]))
        {
            Silenced = ids.Take(1).Select(id => new SilencedAdvice("some-advice", [id], note)).ToValueList(),
        };

    private static WiringAllowances Wiring(int[] lengths) => new(lengths[0].Mm, lengths[1].Mm, lengths[2].Mm, lengths[3].Mm, lengths[4].Mm);

    private static Feed FeedOf(RigProblem problem, GearId device, bool reversed) => problem.Supply?.Outlets is [var outlet, ..]
        ? new Feed(device, [outlet.Id], OutletJoin.Single, outlet.Volts[0], [outlet.Volts[0]], reversed)
        : Feed.FromBattery(device);
}
