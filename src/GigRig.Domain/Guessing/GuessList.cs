using GigRig.Domain.Gear;

namespace GigRig.Domain.Guessing;

internal static class GuessList
{
    public static ValueList<Guess> Of(params ReadOnlySpan<(Guess Guess, bool Made)> all)
    {
        var made = new List<Guess>();
        foreach (var (guess, isMade) in all)
            if (isMade)
                made.Add(guess);
        return made.Order().ToValueList();
    }
}
