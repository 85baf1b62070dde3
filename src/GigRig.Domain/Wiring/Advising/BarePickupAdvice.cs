using GigRig.Domain.Gear;
using GigRig.Domain.Rules;

namespace GigRig.Domain.Wiring.Advising;

internal sealed class BarePickupAdvice : IAdvice
{
    public string Id => AdviceIds.BarePickup;

    public string Sentence => "A device that wants the bare pickup has nothing that buffers before it.";

    public string Basis => "Common practice among circuit designers: the pickup itself sets the gain. Not true of a fuzz with a resistor of its own at the input; leave that unmarked.";

    public IEnumerable<Advice> About(SignalPath path)
    {
        foreach (var fuzz in path.Stops.Where(stop => stop.Device.WantsBarePickup))
        {
            var buffers = path.Before(fuzz).Where(stop => stop.Buffers).ToList();
            var driven = path.Problem.Instrument is { Pickup.Active: true } or { Family: InstrumentFamily.Keyboard };
            if (fuzz.Part == ChainPart.Loop)
                yield return new(Id, [fuzz.Id], $"{fuzz.Name} wants the bare pickup but is in the amp's loop: it may squeal and will not clean up with the guitar. Put it in front, first in line.");
            else if (buffers.Count > 0)
                yield return new(Id, [fuzz.Id, .. buffers.Select(stop => stop.Id)], $"{fuzz.Name} wants the bare pickup, but {buffers.Select(stop => stop.Name).Listed()} before it buffers: it may squeal and will not clean up with the guitar. Put {fuzz.Name} first.");
            else if (driven)
                yield return new(Id, [fuzz.Id], $"{fuzz.Name} wants the bare pickup, but {path.Problem.Instrument!.Name} drives the lead with a preamp of its own: it may squeal and will not clean up.");
        }
    }
}
