using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Wishes;
using GigRig.Web.Sheets;

namespace GigRig.Web.Features.Plan;

/// <summary>A thing that was offered to the planner, and what became of it.</summary>
/// <param name="Number">As in the drawing; null where it does not stand on the board.</param>
/// <param name="Does">What it covers, or could do.</param>
public sealed record ThingRow(GearId Id, int? Number, string Name, string Does, bool ComesAlong);

/// <summary>Every device and off-board thing of a question: first those that come along, by number, then the rest by name.</summary>
public static class ThingRows
{
    /// <param name="rig">Null where there is no rig: then everything stays home.</param>
    public static ValueList<ThingRow> Of(RigProblem problem, Rig? rig)
    {
        var numbers = RigNumbers.Of(rig ?? Rig.Empty);
        var coverage = Coverage.Of(problem, rig ?? Rig.Empty);
        var offBoard = rig?.OffBoard ?? [];
        return problem.Devices.Select(device => (device.Id, device.Name, device.Functions))
            .Concat(problem.OffBoard.Select(item => (item.Id, item.Name, item.Functions)))
            .Select(thing => new ThingRow(
                thing.Id,
                numbers.TryGetValue(thing.Id, out var number) ? number : null,
                thing.Name,
                DoesOf(thing.Id, thing.Functions),
                numbers.ContainsKey(thing.Id) || offBoard.Contains(thing.Id)))
            .OrderByDescending(row => row.ComesAlong)
            .ThenBy(row => row.Number ?? int.MaxValue)
            .ThenBy(row => row.Name, StringComparer.CurrentCultureIgnoreCase)
            .ToValueList();

        string DoesOf(GearId id, ValueList<RoleFunction> functions) =>
            numbers.ContainsKey(id) || offBoard.Contains(id)
                ? CoverSheet.RolesOf(problem, coverage, id, functions)
                : string.Join(", ", functions.Select(function => problem.TitleOf(function.Role)).Distinct());
    }
}
