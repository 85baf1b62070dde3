using GigRig.Domain.Gear;

namespace GigRig.Domain.Wiring.Advising;

internal sealed class ParallelWholeAdvice : IAdvice
{
    private static readonly string[] Whole = ["tuner", "filter", "compressor", "drive", "equaliser", "boost", "gate", "volume", "modulation.tremolo"];

    public string Id => AdviceIds.ParallelWhole;

    public string Sentence => "What must shape the whole signal is not in a parallel loop.";

    public string Basis => "Common practice: drives, equalisers and tremolo belong in a series loop or in front, as the dry part would pass them by.";

    public IEnumerable<Advice> About(SignalPath path)
    {
        if (path.Problem.Amp is not { Loop: AmpLoop.Parallel } amp)
            yield break;
        foreach (var stop in path.Loop.Where(WantsWhole))
            yield return new(Id, [stop.Id], $"{stop.Name} is in the parallel loop of {amp.Name}, where part of the sound passes it by. Put it in front.");
    }

    internal static bool WantsWhole(PathStop stop) => Whole.Any(stop.Plays);
}
