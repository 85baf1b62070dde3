using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;

namespace GigRig.Web.Sheets;

/// <summary>
/// The number each thing on the board goes by, the same in the drawing and in every list: audio order first, then what is left from left to right,
/// then a supply that stands on the board.
/// </summary>
internal static class RigNumbers
{
    public static IReadOnlyDictionary<GearId, int> Of(Rig rig)
    {
        var placed = rig.Placements.Select(placement => placement.Id).ToHashSet();
        return rig.Chain.Front.Concat(rig.Chain.Loop).Where(placed.Contains)
            .Concat(rig.Placements.OrderBy(placement => placement.At.X).ThenBy(placement => placement.At.Y).Select(placement => placement.Id))
            .Concat(rig.Supply is { } supply ? [supply.Id] : [])
            .Distinct()
            .Select((id, index) => (id, number: index + 1))
            .ToDictionary(pair => pair.id, pair => pair.number);
    }
}
