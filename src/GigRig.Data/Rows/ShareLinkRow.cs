using GigRig.Domain.Units;

namespace GigRig.Data.Rows;

/// <summary>One way in to one rig. The token itself is never stored.</summary>
internal sealed class ShareLinkRow : OwnedRow
{
    public Guid Id { get; set; }

    public Guid RigId { get; set; }

    public string Name { get; set; } = "";

    /// <summary>SHA-256 of the token's text, 32 bytes.</summary>
    public byte[] TokenHash { get; set; } = [];

    public DateTime? ExpiresUtc { get; set; }

    public DateTime? RevokedUtc { get; set; }

    /// <summary>The day alone, in UTC: enough for the owner to see whether it is used, too little to say by whom.</summary>
    public DateOnly? LastOpenedOn { get; set; }

    /// <summary>Number of the version it shows for good; null where it shows the rig as it is.</summary>
    public int? FrozenVersion { get; set; }

    public bool ShowsNotes { get; set; }

    public bool ShowsValues { get; set; }

    public bool ShowsPlaces { get; set; }

    public LengthUnit Unit { get; set; }

    public RigRow? Rig { get; set; }

    public LinkContent Content
    {
        get => new(ShowsNotes, ShowsValues, ShowsPlaces, Unit);
        set => (ShowsNotes, ShowsValues, ShowsPlaces, Unit) = value;
    }
}
