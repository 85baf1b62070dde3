namespace GigRig.Domain.Rigs.Checks;

/// <summary>Collects every complaint. Stops listing after some hundreds: nobody reads more, and a hostile text should not cost more.</summary>
internal sealed class CheckList
{
    public const int Most = 500;

    private readonly List<Complaint> complaints = [];

    public ValueList<Complaint> Complaints => complaints.ToValueList();

    public bool Clean => complaints.Count == 0;

    public void Add(string pointer, string value, string limit, string message)
    {
        if (complaints.Count < Most)
            complaints.Add(new(pointer, value, limit, message));
        else if (complaints.Count == Most)
            complaints.Add(new("", "", $"{Most} complaints", $"There are more than {Most} complaints. Correct these first."));
    }
}
