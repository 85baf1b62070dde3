using GigRig.Domain;
using GigRig.Domain.Rigs;

namespace GigRig.Data;

/// <summary>What was to be stored makes no sense, so that no problem could ever be asked with it. Nothing was written.</summary>
public sealed class RefusedThingException : Exception
{
    internal RefusedThingException(string thing, ValueList<Complaint> complaints)
        : base($"The {thing} can't be stored. {string.Join(" ", complaints.Select(complaint => complaint.Message))}") => Complaints = complaints;

    /// <summary>Everything found wrong; the paths start at the thing itself, such as <c>/power/min</c>.</summary>
    public ValueList<Complaint> Complaints { get; }
}
