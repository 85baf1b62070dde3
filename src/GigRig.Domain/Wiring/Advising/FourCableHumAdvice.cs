namespace GigRig.Domain.Wiring.Advising;

internal sealed class FourCableHumAdvice : IAdvice
{
    public string Id => AdviceIds.FourCableHum;

    public string Sentence => "A device that is hooked up with four leads has a supply outlet of its own.";

    public string Basis => "Common practice: four leads join the signal earths twice, which can hum. An isolated outlet breaks the circle on the supply side.";

    public IEnumerable<Advice> About(SignalPath path)
    {
        if (path.Straddler is { } both && path.Problem.Amp is { } amp)
            yield return new(Id, [both.Id], $"{both.Name} is joined to {amp.Name} by four leads, which can hum: give it an isolated outlet and run the leads close together. Never lift the mains earth.");
    }
}
