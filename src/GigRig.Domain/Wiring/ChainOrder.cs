using GigRig.Domain.Events;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;

namespace GigRig.Domain.Wiring;

/// <summary>One device of a chain and why it usually stands where it does.</summary>
/// <param name="Reason">One sentence for the musician.</param>
public sealed record ChainPlace(GearId Device, ChainPart Part, string Reason);

/// <summary>
/// The audio order most players' guides give: by the chain rank of what a device is there for; time effects in the amp's loop where the amp makes the distortion.
/// On a bass the compressor comes early. Common practice, no standard; a musician may change it.
/// </summary>
public static class ChainOrder
{
    private const int RankOfACompressorOnABass = 15;

    private static readonly Role Drive = new("drive");
    private static readonly Role Compressor = new("compressor");

    /// <summary>Orders these devices of the problem; those that carry no audio are left out. Alike ones stay in the problem's order.</summary>
    public static Chain Order(RigProblem problem, IEnumerable<GearId> placed)
    {
        var rig = Rig.Empty with { Placements = placed.Select(id => new Placement(id, default)).ToValueList() };
        var played = RolesPlayed.In(problem, rig);
        var loop = UsesLoop(problem, played);
        var devices = problem.DevicesOn(rig)
            .Where(device => device.CarriesAudio)
            .Select(device => (device, role: RoleOf(device, played)))
            .OrderBy(d => RankOf(d.role, problem.Instrument))
            .ToLookup(d => loop && GoesIntoLoop(d.device, d.role), d => d.device.Id);
        return new(devices[false].ToValueList(), devices[true].ToValueList());
    }

    /// <summary>The chain as it is, with the reason for the usual place of each device. Ids that the problem does not know are left out.</summary>
    public static ValueList<ChainPlace> Reasons(RigProblem problem, Rig rig)
    {
        var played = RolesPlayed.In(problem, rig);
        return Part(ChainPart.Front, rig.Chain.Front).Concat(Part(ChainPart.Loop, rig.Chain.Loop)).ToValueList();

        IEnumerable<ChainPlace> Part(ChainPart part, ValueList<GearId> ids) =>
            from device in ids.Select(problem.FindDevice).OfType<Device>()
            select new ChainPlace(device.Id, part, ChainReasons.Of(device, RoleOf(device, played), part, problem.Instrument));
    }

    /// <summary>Whether a device may go between send and return and through the front at once, its own send and return leading to and from the amp.</summary>
    internal static bool StraddlesLoop(RigProblem problem, Device device) =>
        device.HasSendAndReturn && problem.Amp is { Loop: not AmpLoop.None } && problem.Event.Chain != ChainPolicy.AllInFront;

    /// <summary>The first role a device is there for; null for one that can do nothing.</summary>
    private static Role? RoleOf(Device device, RolesPlayed played) => played.Of(device) is [var role, ..] ? role : null;

    private static int RankOf(Role? role, Instrument? instrument) => role switch
    {
        null => RoleCatalogue.RankOfOwnRoles,
        { } known when instrument?.Family == InstrumentFamily.Bass && known.Meets(Compressor) => RankOfACompressorOnABass,
        { } known => RoleCatalogue.ChainRankOf(known),
    };

    private static bool GoesIntoLoop(Device device, Role? role) =>
        role is { } known && RoleCatalogue.FindNearest(known) is { IsTimeEffect: true } && !device.HasSendAndReturn;

    private static bool UsesLoop(RigProblem problem, RolesPlayed played) =>
        problem.Amp is { Loop: not AmpLoop.None } amp
        && problem.Event.Chain switch
        {
            ChainPolicy.AllInFront => false,
            ChainPolicy.TimeInLoop => true,
            _ => played.Plays(amp, Drive),
        };
}
