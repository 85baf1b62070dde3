namespace GigRig.Planning.Arranging;

/// <summary>How well things stand, in the tiers of a score that are about places: less is better.</summary>
/// <param name="Leads">Patch lead in chain order, millimetres.</param>
/// <param name="Reach">Presses times way for the feet.</param>
/// <param name="Fronts">Different lines on which fronts stand.</param>
internal readonly record struct Cost(long Leads, long Reach, int Fronts) : IComparable<Cost>
{
    public int CompareTo(Cost other)
    {
        var leads = Leads.CompareTo(other.Leads);
        if (leads != 0)
            return leads;
        var reach = Reach.CompareTo(other.Reach);
        return reach != 0 ? reach : Fronts.CompareTo(other.Fronts);
    }
}
