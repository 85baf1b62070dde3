using GigRig.Domain.Events;

namespace GigRig.Planning.Searching;

/// <summary>One need to be settled: by whom it is met best. Things are candidates first, then off-board things.</summary>
/// <param name="Base">The rating the amp reaches; 0 where it does not meet the need.</param>
/// <param name="Bonus">Weight of the wanted sounds that cannot be played while this need is not met.</param>
/// <param name="Options">Whoever does better than the amp, best first.</param>
internal sealed record Step(Need Need, int Base, long Bonus, Option[] Options)
{
    public bool IsMust => Need.Level == NeedLevel.Must;

    /// <summary>What it is worth to meet the need at this rating.</summary>
    public long Gain(Worth worth, int rating) =>
        rating == 0 ? 0 : (rating * worth.RatingStep) + (((IsMust ? 0 : Need.Weight) + Bonus) * worth.Want);
}

/// <summary>A thing that meets a need.</summary>
internal readonly record struct Option(int Thing, int Rating);
