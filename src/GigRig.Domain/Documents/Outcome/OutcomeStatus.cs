namespace GigRig.Domain.Documents.Outcome;

/// <summary>The three-way answer as a word.</summary>
public enum OutcomeStatus
{
    Proposed,
    Impossible,
    Undecided,
}
