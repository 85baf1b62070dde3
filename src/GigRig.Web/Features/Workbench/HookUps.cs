using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.Domain.Units;

namespace GigRig.Web.Features.Workbench;

/// <summary>A whole hook-up for these devices of the problem, near the one before; null where they cannot all be fed.</summary>
public delegate ValueList<Feed>? SolveHookUp(RigProblem problem, ValueList<GearId> devices, ValueList<Feed> before);

/// <summary>
/// Keeps a rig fed while devices come and go, with as few plugs changed as can be: what is fed stays so, a newcomer gets a free outlet, and only
/// where there is none is everything hooked up anew. Where even that fails, the rules say what is not fed.
/// </summary>
public sealed class HookUps(RigProblem problem, SolveHookUp solve)
{
    public Rig Mended(Rig rig)
    {
        foreach (var hungry in Unfed(rig).ToList())
            rig = FedFromFreeOutlet(rig, hungry) ?? rig;
        if (!Unfed(rig).Any())
            return rig;
        return solve(problem, rig.Placements.Select(placement => placement.Id).ToValueList(), rig.HookUp) is { } anew ? rig with { HookUp = anew } : rig;
    }

    /// <summary>Null where no free outlet feeds it without breaking a rule.</summary>
    private Rig? FedFromFreeOutlet(Rig rig, Device device)
    {
        var faults = RuleBook.Check(problem, rig).Count;
        return FreeFeeds(rig, device)
            .Select(feed => rig with { HookUp = [.. rig.HookUp, feed] })
            .FirstOrDefault(fed => RuleBook.Check(problem, fed).Count < faults);
    }

    private IEnumerable<Device> Unfed(Rig rig) =>
        problem.DevicesOn(rig).Where(device => device.Power is not null && rig.HookUp.All(feed => feed.Device != device.Id));

    /// <summary>From an outlet nobody uses: straight first, then through a reversing lead.</summary>
    private IEnumerable<Feed> FreeFeeds(Rig rig, Device device)
    {
        var used = rig.HookUp.SelectMany(feed => feed.Outlets).ToHashSet(StringComparer.Ordinal);
        return
            from reversed in new[] { false, true }
            from outlet in problem.Supply?.Outlets ?? []
            where !used.Contains(outlet.Id)
            from volts in outlet.Volts
            where volts >= device.Power!.Min && volts <= device.Power.Max
            select new Feed(device.Id, [outlet.Id], OutletJoin.Single, volts, [volts], reversed);
    }
}
