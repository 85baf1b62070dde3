using GigRig.Domain;
using GigRig.Domain.Events;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Wishes;

namespace GigRig.Planning.Wiring;

/// <summary>
/// The audio order most players' guides give: by the chain rank of what a device is there for; time effects in the amp's loop where the amp makes the distortion.
/// Common practice, no standard; a musician may change it.
/// </summary>
public static class DefaultChain
{
    private static readonly Role Drive = new("drive");

    /// <summary>Orders these devices of the problem; those that carry no audio are left out.</summary>
    public static Chain Order(RigProblem problem, IEnumerable<GearId> placed)
    {
        var rig = Rig.Empty with { Placements = placed.Select(id => new Placement(id, default)).ToValueList() };
        var coverage = Coverage.Of(problem, rig);
        var loop = UsesLoop(problem, coverage);
        var devices = problem.DevicesOn(rig)
            .Where(CarriesAudio)
            .Select(d => (d.Id, Entry: Place(d, coverage)))
            .OrderBy(d => d.Entry?.ChainRank ?? RoleCatalogue.RankOfOwnRoles)
            .ToLookup(d => loop && d.Entry is { IsTimeEffect: true }, d => d.Id);
        return new(devices[false].ToValueList(), devices[true].ToValueList());
    }

    private static bool CarriesAudio(Device device) => device.Jacks.Count == 0 || device.Jacks.Any(j => j.Use is JackUse.In or JackUse.Out);

    /// <summary>Where a device goes: by the first role it is here for, else by its first function.</summary>
    private static RoleEntry? Place(Device device, Coverage coverage)
    {
        var used = coverage.Needs.Where(n => n.Cover?.Thing == device.Id).Select(n => n.Cover!.Function.Role)
            .Concat(coverage.Sounds.SelectMany(s => s.Covers ?? []).Where(c => c.Thing == device.Id).Select(c => c.Function.Role));
        return used.Concat(device.Functions.Take(1).Select(f => f.Role)).Take(1).Select(RoleCatalogue.FindNearest).FirstOrDefault();
    }

    private static bool UsesLoop(RigProblem problem, Coverage coverage)
    {
        if (problem.Amp is not { Loop: not AmpLoop.None } amp)
            return false;
        return problem.Event.Chain switch
        {
            ChainPolicy.AllInFront => false,
            ChainPolicy.TimeInLoop => true,
            _ => coverage.Needs.Any(n => n.Cover is { } cover && cover.Thing == amp.Id && cover.Function.Role.Meets(Drive))
                || coverage.Sounds.SelectMany(s => s.Covers ?? []).Any(c => c.Thing == amp.Id && c.Function.Role.Meets(Drive)),
        };
    }
}
