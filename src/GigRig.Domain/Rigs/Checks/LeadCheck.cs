using GigRig.Domain.Gear;

namespace GigRig.Domain.Rigs.Checks;

internal static class LeadCheck
{
    public static void Run(Lead lead, Spot spot)
    {
        spot.Text("name", lead.Name, Bounds.LongestName);
        spot.Word("kind", lead.Kind);
        spot.Length("length", lead.Length, 1, Bounds.MostLeadLength);
        spot.Word("firstPlug", lead.FirstPlug);
        spot.Word("secondPlug", lead.SecondPlug);
        spot.Whole("count", lead.Count, 1, Bounds.MostOfALead);
        if (lead.Capacitance is { } capacitance)
            spot.Whole("capacitance", capacitance, 1, Bounds.MostLeadCapacitance, " pF/m");
    }
}
