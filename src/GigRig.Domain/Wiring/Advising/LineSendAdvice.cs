using GigRig.Domain.Gear;

namespace GigRig.Domain.Wiring.Advising;

internal sealed class LineSendAdvice : IAdvice
{
    public string Id => AdviceIds.LineSend;

    public string Sentence => "What is in a loop that sends line level takes line level at its input.";

    public string Basis => "Common practice: floor devices can clip on a line-level send; some amps have a switch for it.";

    public IEnumerable<Advice> About(SignalPath path)
    {
        if (path.Problem.Amp is not { LoopLevel: SignalLevel.Line } amp)
            yield break;
        foreach (var stop in path.Loop.Concat(path.Straddler is { } straddler ? [straddler] : []).Where(stop => stop.Device.InputLevel != SignalLevel.Line))
            yield return new(Id, [stop.Id, amp.Id], $"{amp.Name} sends line level, and {stop.Name} {(stop.Device.InputLevel == SignalLevel.Instrument ? "is made for instrument level: it will" : "may be made for instrument level: then it will")} clip. Turn the send down, or set its level switch if it has one.");
    }
}
