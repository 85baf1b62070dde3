using GigRig.Data;
using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;

namespace GigRig.Web.Features.Workbench;

/// <summary>
/// Puts what has come into the library since a rig was planned on its shelf. What the rig was planned with keeps the facts it was planned with.
/// </summary>
internal static class OwnedSince
{
    /// <summary>The problem with the ready devices and off-board things it does not know yet; as it is where that would be too many.</summary>
    public static RigProblem On(RigProblem problem, GearLibrary library)
    {
        var extended = problem.Draft with
        {
            Devices = [.. problem.Devices, .. Ready(library.Devices).Where(device => problem.FindDevice(device.Id) is null)],
            OffBoard = [.. problem.OffBoard, .. Ready(library.OffBoard).Where(item => problem.FindOffBoard(item.Id) is null)],
        };
        return extended != problem.Draft && RigProblem.Create(extended) is ProblemCheck.Accepted accepted ? accepted.Problem : problem;
    }

    /// <summary>What is worth keeping with a rig: what it was planned with, and of the rest what it uses.</summary>
    public static RigProblem Kept(RigProblem planned, RigProblem extended, Rig rig)
    {
        var used = extended.Draft with
        {
            Devices = extended.Devices.Where(device => planned.FindDevice(device.Id) is not null || rig.Holds(device.Id)).ToValueList(),
            OffBoard = extended.OffBoard.Where(item => planned.FindOffBoard(item.Id) is not null || rig.Holds(item.Id)).ToValueList(),
        };
        return used != planned.Draft && RigProblem.Create(used) is ProblemCheck.Accepted accepted ? accepted.Problem : planned;
    }

    private static IEnumerable<T> Ready<T>(ValueList<Stored<OwnedGear<T>>> owned)
        where T : class =>
        owned.Where(thing => thing.Item.Ownership.Status == GearStatus.Ready).Select(thing => thing.Item.Thing);
}
