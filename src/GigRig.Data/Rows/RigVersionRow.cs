namespace GigRig.Data.Rows;

/// <summary>A rig as it once was saved. Written by <see cref="RigHistory"/> alone, never changed.</summary>
internal sealed class RigVersionRow : OwnedRow
{
    public Guid RigId { get; set; }

    /// <summary>The version the rig had when it was saved so. Rises with time; renaming counts too, so there are gaps.</summary>
    public int Number { get; set; }

    /// <summary>The rig's name at the time.</summary>
    public string Name { get; set; } = "";

    /// <summary>For lists, so that they need not read the documents.</summary>
    public int DeviceCount { get; set; }

    public string ProblemJson { get; set; } = "";

    public string RigJson { get; set; } = "";

    public DateTime SavedUtc { get; set; }

    public RigRow? Rig { get; set; }

    public string Title => $"version {Number} of rig \"{Name}\"";

    public static RigVersionRow Of(RigRow rig, int number) => new()
    {
        RigId = rig.Id,
        Number = number,
        Name = rig.Name,
        DeviceCount = rig.DeviceCount,
        ProblemJson = rig.ProblemJson,
        RigJson = rig.RigJson,
        SavedUtc = rig.SavedUtc,
    };

    /// <param name="note">Notes are kept with the rig, not with its versions.</param>
    public SavedRig ToItem(string note) => new(Name, note, RigText.ReadProblem(ProblemJson, Title), RigText.ReadRig(RigJson, Title), SavedUtc);
}
