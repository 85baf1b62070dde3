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

    public DateTime? LastOpenedUtc { get; set; }

    public RigRow? Rig { get; set; }
}
