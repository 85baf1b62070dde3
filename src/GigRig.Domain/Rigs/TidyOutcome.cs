using GigRig.Domain.Wishes;

namespace GigRig.Domain.Rigs;

/// <summary>What became of the same things stood better.</summary>
public abstract record TidyOutcome
{
    private TidyOutcome()
    {
    }

    /// <summary>They stand without breaking a rule about places; what else was wrong with the rig still is. Never scores worse than it did, unless it did not stand.</summary>
    public sealed record Tidied(Rig Rig, Score Score) : TidyOutcome;

    /// <summary>Proved: they cannot stand together, at least not around what is fixed.</summary>
    public sealed record NoRoom(ValueList<ConflictPart> Conflict) : TidyOutcome;

    /// <summary>Time ran out, or it was called off, before a place was found for all or proved not to exist.</summary>
    public sealed record Undecided : TidyOutcome;
}
