using GigRig.Domain.Rules;

namespace GigRig.Domain.Wiring.Advising;

internal sealed class GateBeforeNoiseAdvice : IAdvice
{
    public string Id => AdviceIds.GateBeforeNoise;

    public string Sentence => "A gate stands behind the drives whose noise it shuts off, or straddles them by a send and return of its own.";

    public string Basis => "Common practice: gate after the dirt; one that listens to the clean guitar and mutes later is wired by its send and return.";

    public IEnumerable<Advice> About(SignalPath path)
    {
        foreach (var gate in path.Stops.Where(stop => stop.Plays("gate") && !stop.Device.HasSendAndReturn))
            if (path.After(gate).Where(stop => stop.Plays("drive")).ToList() is { Count: > 0 } drives)
                yield return new(Id, [gate.Id, .. drives.Select(stop => stop.Id)], $"{gate.Name} shuts before {drives.Select(stop => stop.Name).Listed()} makes noise, so the noise stays. Put it behind the drives and before the echoes.");
    }
}
