using GigRig.Domain.Rules;

namespace GigRig.Domain.Wiring.Advising;

internal sealed class VolumeAfterEchoAdvice : IAdvice
{
    public string Id => AdviceIds.VolumeAfterEcho;

    public string Sentence => "A volume pedal stands before delay and reverb.";

    public string Basis => "Common practice: behind them it fades everything but cuts the tails.";

    public IEnumerable<Advice> About(SignalPath path)
    {
        foreach (var volume in path.Stops.Where(stop => stop.Plays("volume")))
            if (path.Before(volume).Where(stop => stop.Plays("delay") || stop.Plays("reverb")).ToList() is { Count: > 0 } echoes)
                yield return new(Id, [volume.Id, .. echoes.Select(stop => stop.Id)], $"Closing {volume.Name} cuts the tails of {echoes.Select(stop => stop.Name).Listed()}. Put it before them and they ring on.");
    }
}
