using GigRig.Domain;
using GigRig.Domain.Rigs;

namespace GigRig.Data.Files;

/// <summary>What importing would do to one thing.</summary>
public enum ImportChange
{
    /// <summary>It is not here yet, or was deleted and comes back.</summary>
    Added,

    /// <summary>It is here, and something in it differs.</summary>
    Changed,

    /// <summary>It is here and equal; nothing would be written.</summary>
    Same,
}

/// <param name="Thing">Its kind and name, such as <c>device "Tape echo"</c>.</param>
/// <param name="Version">The version that is here; 0 for none.</param>
public sealed record ImportLine(ImportChange Change, string Thing, int Version);

/// <summary>What a library file would do, without having done it.</summary>
/// <param name="Lines">One for each thing of the file; empty where the file is refused.</param>
/// <param name="Complaints">Everything found wrong. One is enough to refuse the whole file.</param>
public sealed record ImportPreview(ValueList<ImportLine> Lines, ValueList<Complaint> Complaints)
{
    public bool CanImport => Complaints.Count == 0;

    public int Added => Count(ImportChange.Added);

    public int Changed => Count(ImportChange.Changed);

    public int Same => Count(ImportChange.Same);

    internal LibraryContent? Content { get; init; }

    internal static ImportPreview Refused(ValueList<Complaint> complaints) => new([], complaints);

    private int Count(ImportChange change) => Lines.Count(line => line.Change == change);
}
