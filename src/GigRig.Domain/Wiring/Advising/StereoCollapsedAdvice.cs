using GigRig.Domain.Gear;

namespace GigRig.Domain.Wiring.Advising;

internal sealed class StereoCollapsedAdvice : IAdvice
{
    public string Id => AdviceIds.StereoCollapsed;

    public string Sentence => "A device with two outputs is followed by a lead from each.";

    public string Basis => "Common practice: stereo chorus and delay summed to mono can hollow out; use a true mono output or a mono setting. Small PAs are often mono anyway.";

    public IEnumerable<Advice> About(SignalPath path)
    {
        foreach (var stop in path.Stops.Where(stop => stop.Device.Jacks.Count(jack => jack.Use == JackUse.Out) > 1))
            if (path.Hops.Where(hop => hop.From.Id == stop.Id && hop.From.Jack == JackUse.Out && hop.Kind != HopKind.DeskLine).ToList() is [var only])
                yield return new(Id, [stop.Id], $"The stereo of {stop.Name} ends at the one input of {NameOf(path, only.To)}: use its mono output or a mono setting, or chorus and echoes may hollow out.");
    }

    private static string NameOf(SignalPath path, HopEnd end) => end.Id is { } id ? path.Problem.NameOf(id) : "the desk";
}
