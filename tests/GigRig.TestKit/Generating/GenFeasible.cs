using CsCheck;
using GigRig.Domain;
using GigRig.Domain.Events;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.TestKit.Building;

namespace GigRig.TestKit.Generating;

/// <summary>
/// Questions that have an answer, with one answer: first a rig is put together so that it keeps every rule, then the question is asked to which it is an answer.
/// Things of no use lie about as well.
/// </summary>
public static class GenFeasible
{
    public static Gen<(RigProblem Problem, Rig Rig)> Pair { get; } =
        from count in Gen.Int[1, 4]
        from devices in GenMany.Each(count, GenGear.Device)
        from spares in GenMany.Each(2, index => GenGear.Device(count + index))
        from offBoard in GenMany.Each(2, GenGear.OffBoard)
        from amp in GenGear.Amp
        from row in FeasibleRow.Of(devices)
        from power in FeasiblePower.Of(devices)
        from slack in Gen.Int[0, 3]
        from musts in Gen.Bool.Array[30]
        from inLoop in Gen.Int[0, count]
        let draft = A.Draft(row.Board) with
        {
            Supply = power.Supply,
            Adapters = power.Adapters,
            Amp = amp,
            Devices = [.. devices, .. spares],
            OffBoard = offBoard,
            Options = PlanOptions.Default with { Plugs = FeasibleRow.Plugs },
        }
        let rig = new Rig(row.Placements, null, [offBoard[0].Id], power.HookUp, ChainOf(devices, amp, inLoop))
        let night = NightFor(draft.Problem(), rig, musts, slack)
        select ((draft with { Event = night }).Problem(), rig);

    private static Chain ChainOf(ValueList<Device> devices, Amp amp, int inLoop)
    {
        var audio = devices.Where(device => device.CarriesAudio).Select(device => device.Id).ToList();
        var front = amp.Loop == AmpLoop.None ? audio.Count : Math.Max(0, audio.Count - inLoop);
        return new([.. audio.Take(front)], [.. audio.Skip(front)]);
    }

    /// <summary>Needs what the rig does, wants the rest of the world, allows what the rig weighs and a little more.</summary>
    private static EventType NightFor(RigProblem problem, Rig rig, bool[] musts, int slack)
    {
        var things = problem.FunctionsIn(rig).ToList();
        var does = things.Select(f => f.Function.Role).Distinct().ToList();
        var needs = does.Select((role, index) => new Need(role, musts[index % musts.Length] ? NeedLevel.Must : NeedLevel.Want, 5)).Append(new(new("unheard-of"), NeedLevel.Want));
        // One function of each thing can always be on together with those of the others.
        var together = things.GroupBy(f => f.Thing).Select(functions => functions.First().Function.Role).Distinct().Take(3).ToValueList();
        ValueList<Sound> sounds = together.Count == 0 ? [] : [new("Together", together)];
        var limits = new EventLimits(problem.MassCarried(rig) + (100 * slack).G, rig.Placements.Count + slack);
        return new("Night", needs.ToValueList(), sounds, limits);
    }
}
