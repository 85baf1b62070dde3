using GigRig.Domain.Documents;

namespace GigRig.Data.Rows;

/// <summary>A rig as it was when saved. It holds copies, not references, so that gear can be edited or deleted later without changing it.</summary>
internal sealed class RigRow : ThingRow<SavedRig>
{
    public string Name { get; set; } = "";

    public string Note { get; set; } = "";

    /// <summary>For lists, so that they need not read the documents.</summary>
    public string EventName { get; set; } = "";

    public string BoardName { get; set; } = "";

    public int DeviceCount { get; set; }

    public string ProblemJson { get; set; } = "";

    public string RigJson { get; set; } = "";

    public DateTime SavedUtc { get; set; }

    public override string Title => $"rig \"{Name}\"";

    public override void Set(SavedRig item)
    {
        Name = item.Name;
        Note = item.Note;
        EventName = item.Problem.Event.Name;
        BoardName = item.Problem.Board.Name;
        DeviceCount = item.Rig.Placements.Count;
        ProblemJson = RigProblemJson.Write(item.Problem);
        RigJson = Domain.Documents.RigJson.Write(item.Rig);
        SavedUtc = item.SavedUtc;
    }

    public override SavedRig ToItem() => new(Name, Note, RigText.ReadProblem(ProblemJson, Title), RigText.ReadRig(RigJson, Title), SavedUtc);
}
