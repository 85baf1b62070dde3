using GigRig.Domain.Rules;

namespace GigRig.Domain.Wiring.Advising;

internal sealed class NoCabinetAdvice : IAdvice
{
    public string Id => AdviceIds.NoCabinet;

    public string Sentence => "A drive that goes into the desk without an amp passes a cabinet voice first.";

    public string Basis => "Common practice: a distorted signal without a cabinet stage is fizzy.";

    public IEnumerable<Advice> About(SignalPath path)
    {
        if (path.Problem.Amp is not null || path.Stops.Any(stop => stop.Plays("direct")))
            yield break;
        if (path.Stops.Where(stop => stop.Plays("drive")).ToList() is { Count: > 0 } drives)
            yield return new(Id, drives.Select(stop => stop.Id).ToValueList(), $"{drives.Select(stop => stop.Name).Listed()} goes into the desk without amp or cabinet, which sounds fizzy. Take something along that does it, or ask the desk for a cabinet setting.");
    }
}
