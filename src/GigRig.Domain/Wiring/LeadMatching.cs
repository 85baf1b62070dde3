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

    /// <summary>The shortest lead that would serve a hop if there were room for its plugs; null where one has room, or none would.</summary>
    public static Lead? WithoutRoom(WiredHop hop, IEnumerable<Lead> leads, PlugRoom room)
    {
        var reaching = leads.Where(lead => Reaches(lead, hop)).ToList();
        return reaching.Exists(lead => HasRoom(lead, hop, room)) ? null : reaching.MinBy(lead => lead.Length);
    }

    private static bool Serves(Lead lead, WiredHop hop, PlugRoom room) => Reaches(lead, hop) && HasRoom(lead, hop, room);

    private static bool Reaches(Lead lead, WiredHop hop) => hop.Hop.Served.Contains(lead.Kind) && lead.Length >= hop.Needed;

    private static bool HasRoom(Lead lead, WiredHop wired, PlugRoom room)
    {
        var (hop, onBoard) = (wired.Hop, wired.Hop.Kind == HopKind.Patch);
        return (Fits(lead.FirstPlug, hop.From) && Fits(lead.SecondPlug, hop.To)) || (Fits(lead.SecondPlug, hop.From) && Fits(lead.FirstPlug, hop.To));

        bool Fits(PlugShape plug, HopEnd end) => room.Fits(plug, end, onBoard);
    }
}
