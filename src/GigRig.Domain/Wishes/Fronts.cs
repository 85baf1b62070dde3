using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;

namespace GigRig.Domain.Wishes;

/// <summary>How tidily things stand: on how many different lines their fronts lie. The fewer, the more they stand in rows.</summary>
public static class Fronts
{
    /// <summary>Devices and a supply on top; zero on an empty board.</summary>
    public static int Of(RigProblem problem, Rig rig) =>
        rig.Placements.Where(placement => problem.FindDevice(placement.Id) is not null)
            .Concat(problem.Supply is { Mount: SupplyMount.Top } && rig.Supply is { } supply ? [supply] : [])
            .Select(placement => placement.At.Y)
            .Distinct()
            .Count();
}
