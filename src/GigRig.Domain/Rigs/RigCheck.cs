namespace GigRig.Domain.Rigs;

/// <summary>The answer to reading a rig from a text: the rig, or at least one complaint. Whether it fits, is fed and plays is the rule book's part.</summary>
public abstract record RigCheck
{
    private RigCheck()
    {
    }

    public sealed record Accepted(Rig Rig) : RigCheck;

    public sealed record Refused(ValueList<Complaint> Complaints) : RigCheck
    {
        public ValueList<Complaint> Complaints { get; } = Complaint.AtLeastOne(Complaints);
    }
}
