using GigRig.Domain.Gear;

namespace GigRig.Domain.Wiring;

/// <summary>Owned leads for hops, each lead no more often than it is owned: first the most hops served, then the least length left over, proved by <see cref="LeastCost"/>.</summary>
internal static class LeadMatching
{
    /// <summary>One lead or null for each hop, in their order.</summary>
    public static IEnumerable<Lead?> Of(IReadOnlyList<WiredHop> hops, IEnumerable<Lead> leads, PlugRoom room)
    {
        var single = leads.SelectMany(lead => Enumerable.Repeat(lead, Math.Min(lead.Count, hops.Count))).ToList();
        // One hop unserved costs more than all that could be left over on the others; one of the last columns means "none".
        var unserved = 1 + single.Sum(lead => (long)lead.Length.Value);
        var never = (hops.Count + 1) * unserved;
        var costs = new long[hops.Count, single.Count + hops.Count];
        for (var hop = 0; hop < hops.Count; hop++)
        {
            var serving = single.Distinct().Where(lead => Serves(lead, hops[hop], room)).ToHashSet();
            for (var column = 0; column < single.Count + hops.Count; column++)
                costs[hop, column] = column >= single.Count ? unserved : serving.Contains(single[column]) ? (single[column].Length - hops[hop].Needed).Value : never;
        }

        return LeastCost.Assign(costs).Select(column => column < single.Count ? single[column] : null);
    }

    private static bool Serves(Lead lead, WiredHop wired, PlugRoom room)
    {
        var (hop, onBoard) = (wired.Hop, wired.Hop.Kind == HopKind.Patch);
        return hop.Served.Contains(lead.Kind)
            && lead.Length >= wired.Needed
            && ((Fits(lead.FirstPlug, hop.From) && Fits(lead.SecondPlug, hop.To)) || (Fits(lead.SecondPlug, hop.From) && Fits(lead.FirstPlug, hop.To)));

        bool Fits(PlugShape plug, HopEnd end) => room.Fits(plug, end, onBoard);
    }
}
