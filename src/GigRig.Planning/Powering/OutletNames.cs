using GigRig.Domain;
using GigRig.Domain.Gear;

namespace GigRig.Planning.Powering;

/// <summary>Which of the alike outlets each device gets that opens one: the one it had before where that is among them, else the first that nobody keeps.</summary>
internal sealed class OutletNames
{
    private readonly Dictionary<GearId, List<string>> had = [];
    private readonly OutletClass[] classes;
    private readonly Queue<string>[] free;

    public OutletNames(OutletClass[] classes, PluggedBefore? before, IEnumerable<(GearId Device, FeedPattern Pattern)> plugged)
    {
        this.classes = classes;
        var kept = new HashSet<string>(StringComparer.Ordinal);
        foreach (var (device, pattern) in before is null ? [] : plugged)
        {
            had[device] = [];
            foreach (var c in pattern.Classes)
            {
                if (before!.OutletsOf(device).FirstOrDefault(id => classes[c].Ids.Contains(id) && !kept.Contains(id)) is { } same)
                {
                    had[device].Add(same);
                    kept.Add(same);
                }
            }
        }

        free = [.. classes.Select(c => new Queue<string>(c.Ids.Where(id => !kept.Contains(id))))];
    }

    /// <summary>One outlet for each class of the pattern, in its order.</summary>
    public ValueList<string> Of(GearId device, FeedPattern pattern) => pattern.Classes.Select(c => Kept(device, c) ?? free[c].Dequeue()).ToValueList();

    private string? Kept(GearId device, int outletClass)
    {
        if (!had.TryGetValue(device, out var ids) || ids.FirstOrDefault(id => classes[outletClass].Ids.Contains(id)) is not { } id)
            return null;
        ids.Remove(id);
        return id;
    }
}
