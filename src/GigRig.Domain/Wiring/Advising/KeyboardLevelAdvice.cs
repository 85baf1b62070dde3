using GigRig.Domain.Gear;

namespace GigRig.Domain.Wiring.Advising;

internal sealed class KeyboardLevelAdvice : IAdvice
{
    public string Id => AdviceIds.KeyboardLevel;

    public string Sentence => "A keyboard feeds only devices whose input takes line level.";

    public string Basis => "Common practice: keyboards give line level; attenuate before floor devices built for guitar, and bring the level back after them.";

    public IEnumerable<Advice> About(SignalPath path)
    {
        if (path.Problem.Instrument is { Family: InstrumentFamily.Keyboard } keyboard && path.Front.FirstOrDefault() is { } first && first.Device.InputLevel != SignalLevel.Line)
            yield return new(Id, [first.Id], $"{keyboard.Name} gives line level, and {first.Name} {(first.Device.InputLevel == SignalLevel.Instrument ? "is made for instrument level: it will" : "may be made for instrument level: then it will")} clip. Turn the keyboard down, and bring the level back behind the board.");
    }
}
