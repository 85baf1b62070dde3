using GigRig.Data;
using GigRig.Domain;
using GigRig.Domain.Gear;

namespace GigRig.Web.Features.Plan;

/// <summary>What the address says to plan with: ids, <see cref="None"/>, or null for what the page offers first.</summary>
public sealed record PlanSelection(string? Event = null, string? Board = null, string? Supply = null, string? Amp = null, string? Instrument = null, string? Plugs = null)
{
    /// <summary>Stands for going without a supply or an amp.</summary>
    public const string None = "none";

    /// <summary>The plugs that room is kept for; null for those that are owned.</summary>
    public PlugShape? PlugShape => Enum.TryParse<PlugShape>(Plugs, true, out var shape) && Enum.IsDefined(shape) ? shape : null;

    /// <summary>The thing with this id; where there is none, the first that is offered.</summary>
    public static Stored<T>? Pick<T>(ValueList<Stored<T>> offered, string? id) =>
        id == None ? null : offered.FirstOrDefault(thing => thing.Id.ToString() == id) ?? offered.FirstOrDefault();
}
