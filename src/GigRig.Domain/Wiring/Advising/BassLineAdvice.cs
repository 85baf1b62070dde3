using GigRig.Domain.Gear;

namespace GigRig.Domain.Wiring.Advising;

internal sealed class BassLineAdvice : IAdvice
{
    public string Id => AdviceIds.BassLine;

    public string Sentence => "Where a bass goes into the desk, it is agreed whether before or behind the effects.";

    public string Basis => "From memory: engineers often want the plain line, players the finished sound.";

    public IEnumerable<Advice> About(SignalPath path)
    {
        if (path.Problem.Instrument is { Family: InstrumentFamily.Bass } bass && path.Stops.Count > 0
            && path.Hops.FirstOrDefault(hop => hop.To.Thing == HopThing.Desk) is { From.Id: { } last })
            yield return new(Id, [last], $"{bass.Name} goes into the desk behind all effects. Agree with the engineer whether the line is wanted before them instead.");
    }
}
