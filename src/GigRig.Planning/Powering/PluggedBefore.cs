using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;

namespace GigRig.Planning.Powering;

/// <summary>How devices were fed before, so that whoever plugs the rig in need not plug it in anew. Says nothing of outlets that are no more.</summary>
internal sealed class PluggedBefore
{
    private readonly Dictionary<GearId, Feed> feeds = [];

    public PluggedBefore(IEnumerable<Feed> feeds)
    {
        foreach (var feed in feeds.Where(f => !f.OnBattery))
            this.feeds.TryAdd(feed.Device, feed);
    }

    public IReadOnlyList<string> OutletsOf(GearId device) => feeds.TryGetValue(device, out var feed) ? [.. feed.Outlets] : [];

    /// <summary>The ways to feed a consumer, those first that are as it was.</summary>
    public FeedPattern[] First(Consumer consumer, OutletClass[] classes)
    {
        if (!feeds.TryGetValue(consumer.Id, out var feed))
            return consumer.Patterns;
        int[] before = [.. feed.Outlets.Select(id => Array.FindIndex(classes, c => c.Ids.Contains(id))).Order()];
        return [.. consumer.Patterns.OrderByDescending(p => p.Join == feed.Join && p.Reversed == feed.Reversed && p.Classes.Order().SequenceEqual(before))];
    }
}
