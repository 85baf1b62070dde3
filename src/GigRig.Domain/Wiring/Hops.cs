using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;

namespace GigRig.Domain.Wiring;

/// <summary>
/// Every lead a rig needs, in the order of the signal: instrument, front, amp; send, loop, return; the desk; the amp's foot switch. Two neighbours with two jacks each
/// are joined by two leads. A device that straddles the loop is hooked up with four.
/// </summary>
public static class Hops
{
    private const int Stereo = 2;

    private static readonly Port Desk = new(HopThing.Desk, null, JackUse.In, Stereo);

    public static ValueList<Hop> Of(RigProblem problem, Rig rig) => Of(SignalPath.Of(problem, rig));

    internal static ValueList<Hop> Of(SignalPath path) => Legs(path).SelectMany(Along).Concat(Extras(path)).ToValueList();

    private static IEnumerable<List<Port>> Legs(SignalPath path)
    {
        var last = path.Problem.Amp is { } ending ? AmpPort(ending, JackUse.In) : Desk;
        var (before, after) = path.Straddler is { } straddler
            ? (path.Front.TakeWhile(stop => stop != straddler), path.After(straddler).Where(stop => stop.Part == ChainPart.Front))
            : (path.Front, []);
        List<Port> front = [InstrumentPort(path.Problem.Instrument), .. Through(before)];
        if (path.Straddler is { } both)
        {
            yield return [.. front, DevicePort(both, JackUse.In)];
            yield return [DevicePort(both, JackUse.Send), .. Through(after), last];
        }
        else
        {
            yield return [.. front, last];
        }

        if (path.Problem.Amp is not { } amp || (path.Straddler is null && !path.Loop.Any()))
            yield break;
        if (path.Straddler is { } returning)
        {
            yield return [AmpPort(amp, JackUse.Send), DevicePort(returning, JackUse.Return)];
            yield return [DevicePort(returning, JackUse.Out), .. Through(path.Loop), AmpPort(amp, JackUse.Return)];
        }
        else
        {
            yield return [AmpPort(amp, JackUse.Send), .. Through(path.Loop), AmpPort(amp, JackUse.Return)];
        }
    }

    private static IEnumerable<Hop> Extras(SignalPath path)
    {
        if (path.Problem.Amp is not { } amp)
            yield break;
        if (path.Front.LastOrDefault() is { } last && last != path.Straddler && last.Plays("direct") && CountOf(last.Device, JackUse.Out) >= Stereo)
            yield return new(HopKind.DeskLine, new(HopThing.Device, last.Id, JackUse.Out, 1), Desk.End(0));
        if (path.AmpIsDirect)
            yield return new(HopKind.DeskLine, AmpPort(amp, JackUse.Out).End(0), Desk.End(0));
        if (amp.Footswitch)
            yield return new(HopKind.Footswitch, new(HopThing.Footswitch, null, JackUse.Control), AmpPort(amp, JackUse.Control).End(0));
    }

    /// <summary>In by the first port, through each pair of the middle, out by the last: every even neighbour pair is a hop.</summary>
    private static IEnumerable<Hop> Along(List<Port> ports)
    {
        for (var at = 0; at + 1 < ports.Count; at += 2)
            for (var number = 0; number < Math.Min(Stereo, Math.Min(ports[at].Count, ports[at + 1].Count)); number++)
                yield return new(KindOf(ports[at], ports[at + 1]), ports[at].End(number), ports[at + 1].End(number));
    }

    private static HopKind KindOf(Port from, Port to) => (from.Thing, to.Thing) switch
    {
        (HopThing.Instrument, _) => HopKind.Instrument,
        (HopThing.Amp, _) => HopKind.Loop,
        (_, HopThing.Amp) => to.Jack == JackUse.Return ? HopKind.Loop : HopKind.ToAmp,
        (_, HopThing.Desk) => from.ForDesk ? HopKind.DeskLine : HopKind.ToAmp,
        _ => HopKind.Patch,
    };

    private static IEnumerable<Port> Through(IEnumerable<PathStop> stops) =>
        stops.SelectMany(stop => new[] { DevicePort(stop, JackUse.In), DevicePort(stop, JackUse.Out) });

    private static Port InstrumentPort(Instrument? instrument) =>
        new(HopThing.Instrument, instrument?.Id, JackUse.Out, instrument?.Family == InstrumentFamily.Keyboard ? Stereo : 1);

    private static Port AmpPort(Amp amp, JackUse jack) => new(HopThing.Amp, amp.Id, jack, 1);

    private static Port DevicePort(PathStop stop, JackUse jack) => new(HopThing.Device, stop.Id, jack, CountOf(stop.Device, jack), stop.Plays("direct"));

    /// <summary>At least one: a device with nothing said about its jacks has them all the same.</summary>
    private static int CountOf(Device device, JackUse jack) => Math.Max(1, device.Jacks.Count(other => other.Use == jack));

    /// <summary>All the jacks of one use.</summary>
    private sealed record Port(HopThing Thing, GearId? Id, JackUse Jack, int Count, bool ForDesk = false)
    {
        public HopEnd End(int number) => new(Thing, Id, Jack, number);
    }
}
