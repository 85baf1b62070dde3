using GigRig.Domain.Units;

namespace GigRig.Domain.Wishes;

/// <summary>
/// How good a rule-clean rig is, tier by tier: a later tier never costs an earlier one. Higher <see cref="Wants"/>, then higher <see cref="Rating"/>,
/// then fewer <see cref="Devices"/>, then less <see cref="Mass"/>; for where things stand shorter <see cref="Leads"/>, then less <see cref="Reach"/>, then fewer <see cref="Fronts"/>.
/// </summary>
/// <param name="Wants">The sum of the weights of covered wants, needs and sounds.</param>
/// <param name="Rating">For each covered need, the rating of the best chosen function for it, summed.</param>
/// <param name="Devices">Boxes on the board.</param>
/// <param name="Mass">Board, supply, amp, devices and off-board things.</param>
/// <param name="Leads">Patch lead in chain order, jack to jack.</param>
/// <param name="Reach">Presses times way for the feet, as in <see cref="Wishes.Reach"/>.</param>
/// <param name="Fronts">Lines on which fronts stand, as in <see cref="Wishes.Fronts"/>.</param>
public readonly record struct Score(long Wants, int Rating, int Devices, Grams Mass, Millimetres Leads, long Reach = 0, int Fronts = 0) : IComparable<Score>
{
    /// <summary>Positive where this one is better.</summary>
    public int CompareTo(Score other)
    {
        var chosen = CompareChoice(other);
        if (chosen != 0)
            return chosen;
        var leads = other.Leads.CompareTo(Leads);
        if (leads != 0)
            return leads;
        var reach = other.Reach.CompareTo(Reach);
        return reach != 0 ? reach : other.Fronts.CompareTo(Fronts);
    }

    /// <summary>As <see cref="CompareTo"/>, leaving out where things stand: what <em>proven</em> speaks of.</summary>
    public int CompareChoice(Score other)
    {
        var wants = Wants.CompareTo(other.Wants);
        if (wants != 0)
            return wants;
        var rating = Rating.CompareTo(other.Rating);
        if (rating != 0)
            return rating;
        var devices = other.Devices.CompareTo(Devices);
        return devices != 0 ? devices : other.Mass.CompareTo(Mass);
    }
}
