using GigRig.Domain.Wishes;

namespace GigRig.Planning.Searching;

/// <summary>
/// The tiers of a score that a set decides, as one number: a step of an earlier tier outweighs all of the later ones. Where they do not all go into a number,
/// the last ones are left out; a bound in such numbers is then a little weaker, never wrong.
/// </summary>
internal sealed class Worth
{
    private const long Most = 1L << 60;

    private readonly int fixedMass;

    public Worth(Question question)
    {
        fixedMass = question.FixedMass;
        var wishes = question.Problem.Event;
        var mass = question.Candidates.Sum(c => (long)c.Device.Mass.Value) + question.OffBoard.Sum(i => (long)i.Mass.Value) + 1;
        var devices = question.Candidates.Length + 1L;
        var rating = (wishes.Needs.Count * 5L) + 1;
        var wants = wishes.Needs.Sum(n => (long)n.Weight) + wishes.Sounds.Sum(s => (long)s.Weight) + 1;
        long gram = 1, device = mass;
        if (!Goes(device, devices, rating, wants))
            (gram, device) = (0, 1);
        if (!Goes(device, devices, rating, wants))
            (device, devices) = (0, 1);
        (Gram, Device) = (gram, device);
        RatingStep = Math.Max(1, device) * devices;
        Want = RatingStep * rating;
        IsWhole = gram > 0;
    }

    public long Want { get; }

    public long RatingStep { get; }

    public long Device { get; }

    public long Gram { get; }

    /// <summary>Whether no tier was left out.</summary>
    public bool IsWhole { get; }

    public long Of(Score score) =>
        (score.Wants * Want) + (score.Rating * RatingStep) - (score.Devices * Device) - ((score.Mass.Value - fixedMass) * Gram);

    private static bool Goes(long device, long devices, long rating, long wants) => (Int128)device * devices * rating * wants < Most;
}
