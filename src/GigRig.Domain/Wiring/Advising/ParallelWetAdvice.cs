using GigRig.Domain.Gear;
using GigRig.Domain.Rules;

namespace GigRig.Domain.Wiring.Advising;

internal sealed class ParallelWetAdvice : IAdvice
{
    public string Id => AdviceIds.ParallelWet;

    public string Sentence => "In a parallel loop, effects are set fully wet.";

    public string Basis => "Common practice: a parallel loop blends in the amp; whatever dry sound passes the device as well is heard twice.";

    public IEnumerable<Advice> About(SignalPath path)
    {
        if (path.Problem.Amp is { Loop: AmpLoop.Parallel } amp && path.Loop.Where(stop => !ParallelWholeAdvice.WantsWhole(stop)).ToList() is { Count: > 0 } blended)
            yield return new(Id, blended.Select(stop => stop.Id).ToValueList(), $"{amp.Name} blends its parallel loop itself: set {blended.Select(stop => stop.Name).Listed()} fully wet.");
    }
}
