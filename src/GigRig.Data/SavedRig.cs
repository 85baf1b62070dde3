using GigRig.Domain.Rigs;

namespace GigRig.Data;

/// <summary>A rig the musician keeps, with a copy of all it was made from.</summary>
/// <param name="SavedUtc">When its arrangement was last saved; renaming does not change it.</param>
public sealed record SavedRig(string Name, string Note, RigProblem Problem, Rig Rig, DateTime SavedUtc);

/// <summary>What a list of rigs shows.</summary>
/// <param name="Devices">Boxes on the board.</param>
public sealed record RigSummary(string Name, string Note, string EventName, string BoardName, int Devices, DateTime SavedUtc);

/// <summary>A rig as it once was saved.</summary>
/// <param name="Number">Rises with time, with gaps: renaming counts too.</param>
/// <param name="Name">The rig's name at the time.</param>
/// <param name="Devices">Boxes on the board.</param>
public sealed record RigVersion(int Number, string Name, int Devices, DateTime SavedUtc)
{
    /// <summary>Versions kept of one rig, beside those that links show.</summary>
    public const int MostKept = 50;
}
