using GigRig.Domain.Gear;
using GigRig.Domain.Rules;

namespace GigRig.Domain.Wiring.Advising;

internal sealed class EchoBeforeAmpDriveAdvice : IAdvice
{
    public string Id => AdviceIds.EchoBeforeAmpDrive;

    public string Sentence => "Where the amp makes the distortion, delay and reverb are in its loop.";

    public string Basis => "Common practice: in front they are distorted with the note. An amp without a loop is played clean, or the echoes are left off.";

    public IEnumerable<Advice> About(SignalPath path)
    {
        if (!path.AmpDrives || path.Problem.Amp is not { } amp)
            yield break;
        var echoes = path.Front.Where(stop => stop != path.Straddler && (stop.Plays("delay") || stop.Plays("reverb"))).ToList();
        if (echoes.Count > 0)
            yield return new(Id, [.. echoes.Select(stop => stop.Id), amp.Id], $"{amp.Name} makes distortion behind {echoes.Select(stop => stop.Name).Listed()}, so echoes are distorted with the notes. {(amp.Loop == AmpLoop.None ? "It has no loop: keep the amp clean where echoes count, with the drive on the board." : "Put them in its loop.")}");
    }
}
