using GigRig.Domain.Gear;

namespace GigRig.Web.Features.Gear.Care;

/// <summary>What is known of the library as a whole, to judge single things by.</summary>
/// <param name="used">The names, as in problems, of all that some saved rig uses.</param>
/// <param name="today">By the owner's calendar.</param>
public sealed class LibraryCare(IReadOnlyList<GearRow> rows, IReadOnlySet<GearId> used, DateOnly today)
{
    private readonly Lazy<AlikeThings> alike = new(() => new(rows.Where(row => row.Ownership.Status != GearStatus.Gone)));

    public AlikeThings Alike => alike.Value;

    public bool IsOverdue(GearRow row) => row.Ownership is { Status: GearStatus.LentOut, BackOn: { } day } && day < today;

    /// <summary>Leads are counted, not chosen, so a rig does not say which it uses.</summary>
    public bool IsNeverUsed(GearRow row) => row.Thing is not Lead && !used.Contains(Data.Stored.GearIdOf(row.Id));

    public bool Lets(GearRow row, CareFilter care) => care switch
    {
        CareFilter.NeverUsed => IsNeverUsed(row),
        CareFilter.Alike => Alike.To(row).Count > 0,
        CareFilter.Guessed => row.Ownership.Guesses.Count > 0,
        _ => IsOverdue(row),
    };
}
