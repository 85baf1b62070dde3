using GigRig.Domain.Gear;

namespace GigRig.Domain.Wiring.Advising;

internal sealed class MonoIntoStereoAdvice : IAdvice
{
    public string Id => AdviceIds.MonoIntoStereo;

    public string Sentence => "A device with two inputs gets a lead into each.";

    public string Basis => "Common practice: makers mark the input to use alone, usually the left one.";

    public IEnumerable<Advice> About(SignalPath path)
    {
        foreach (var stop in path.Stops.Where(stop => stop.Device.Jacks.Count(jack => jack.Use == JackUse.In) > 1))
            if (path.Hops.Count(hop => hop.To.Id == stop.Id && hop.To.Jack == JackUse.In) == 1)
                yield return new(Id, [stop.Id], $"One lead reaches the two inputs of {stop.Name}: use the input marked for mono, usually the left one.");
    }
}
