using GigRig.Domain;
using GigRig.Domain.Rigs;

namespace GigRig.Data.Files;

/// <summary>Collects what is wrong with a file. Nobody reads more than two hundred lines, so it keeps no more and counts the rest.</summary>
internal sealed class ComplaintList
{
    private const int Most = 200;

    private readonly List<Complaint> kept = [];
    private int more;

    public ValueList<Complaint> All => more == 0
        ? kept.ToValueList()
        : [.. kept, new("", $"{Most + more} faults", "none", $"There are {more} faults more. Mend these first, then look again.")];

    public void Add(Complaint complaint)
    {
        if (kept.Count < Most)
            kept.Add(complaint);
        else
            more++;
    }

    public void Add(string path, string value, string limit, string message) => Add(new(path, value, limit, message));

    /// <summary>Complaints whose paths start at the thing at <paramref name="place"/>.</summary>
    public void AddAt(string place, IEnumerable<Complaint> complaints)
    {
        foreach (var complaint in complaints)
            Add(complaint with { Path = place + complaint.Path, Message = $"{place}: {complaint.Message}" });
    }

    /// <summary>Reads each item of a list; what gives null has been complained of.</summary>
    public ValueList<TOut> Each<TIn, TOut>(string member, IReadOnlyList<TIn>? items, Func<string, TIn, TOut?> read)
        where TOut : class
    {
        items ??= [];
        if (items.Count > LibraryReading.MostOfAKind)
        {
            Add(member, $"{items.Count}", $"at most {LibraryReading.MostOfAKind}", $"{member} has {items.Count} items, but a file may have at most {LibraryReading.MostOfAKind} of a kind. Import it in parts.");
            return [];
        }

        return items.Select((item, index) => read($"{member}/{index}", item)).OfType<TOut>().ToValueList();
    }
}
