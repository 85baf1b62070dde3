using GigRig.Data;
using GigRig.Domain;

namespace GigRig.Web.Features.Plan;

/// <summary>What the address says to plan with: ids, <see cref="None"/>, or null for what the page offers first.</summary>
public sealed record PlanSelection(string? Event = null, string? Board = null, string? Supply = null, string? Amp = null, string? Instrument = null)
{
    /// <summary>Stands for going without a supply or an amp.</summary>
    public const string None = "none";

    /// <summary>The thing with this id; where there is none, the first that is offered.</summary>
    public static Stored<T>? Pick<T>(ValueList<Stored<T>> offered, string? id) =>
        id == None ? null : offered.FirstOrDefault(thing => thing.Id.ToString() == id) ?? offered.FirstOrDefault();
}
