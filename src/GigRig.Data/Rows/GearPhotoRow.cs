namespace GigRig.Data.Rows;

/// <summary>The photo of one thing of the gear. At most one a thing; a row of its own, so that lists of gear never carry it.</summary>
internal sealed class GearPhotoRow : OwnedRow
{
    /// <summary>Id of the thing, in whichever of the tables of gear it is. A deleted thing keeps its photo, as it can come back.</summary>
    public Guid GearId { get; set; }

    public byte[] Content { get; set; } = [];

    public string ContentType { get; set; } = "";

    public DateTime SavedUtc { get; set; }
}
