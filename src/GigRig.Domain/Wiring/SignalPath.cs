using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;

namespace GigRig.Domain.Wiring;

/// <summary>A device the signal passes.</summary>
/// <param name="Roles">What it is there for.</param>
internal sealed record PathStop(Device Device, ChainPart Part, ValueList<Role> Roles)
{
    public GearId Id => Device.Id;

    public string Name => Device.Name;

    public bool Plays(string role) => Roles.Any(played => played.Meets(new(role)));

    public bool IsTimeEffect => Roles.Any(played => RoleCatalogue.FindNearest(played) is { IsTimeEffect: true });

    public bool Buffers => Device.Bypass == Bypass.Buffered;
}

/// <summary>
/// The way of the signal through a rig, front before loop. A device that is not on the board, not known, or named again is passed over; a loop that the amp
/// does not have is part of the front. So a rig that breaks rules still has a path.
/// </summary>
internal sealed class SignalPath
{
    private readonly RolesPlayed played;
    private ValueList<Hop>? hops;

    private SignalPath(RigProblem problem, Rig rig)
    {
        (Problem, Rig, played) = (problem, rig, RolesPlayed.In(problem, rig));
        var placed = rig.Placements.Select(placement => placement.Id).ToHashSet();
        var hasLoop = problem.Amp is { Loop: not AmpLoop.None };
        Stops = rig.Chain.Front.Select(id => (id, part: ChainPart.Front))
            .Concat(rig.Chain.Loop.Select(id => (id, part: hasLoop ? ChainPart.Loop : ChainPart.Front)))
            .DistinctBy(stop => stop.id)
            .Where(stop => placed.Contains(stop.id) && problem.FindDevice(stop.id) is not null)
            .Select(stop => (stop.part, device: problem.FindDevice(stop.id)!))
            .Select(stop => new PathStop(stop.device, stop.part, played.Of(stop.device)))
            .ToValueList();
        Straddler = Front.FirstOrDefault(stop => ChainOrder.StraddlesLoop(problem, stop.Device));
    }

    public RigProblem Problem { get; }

    public Rig Rig { get; }

    public ValueList<PathStop> Stops { get; }

    public IEnumerable<PathStop> Front => Stops.Where(stop => stop.Part == ChainPart.Front);

    public IEnumerable<PathStop> Loop => Stops.Where(stop => stop.Part == ChainPart.Loop);

    /// <summary>The device that is hooked up with four leads: before the amp by its input and send, behind the amp's preamp by its return and output.</summary>
    public PathStop? Straddler { get; }

    /// <summary>Every lead along the way, worked out once for all that ask.</summary>
    public ValueList<Hop> Hops => hops ??= Wiring.Hops.Of(this);

    /// <summary>Whether the amp is what covers a drive.</summary>
    public bool AmpDrives => Problem.Amp is { } amp && played.Plays(amp, new("drive"));

    /// <summary>Whether the amp is what goes into the desk.</summary>
    public bool AmpIsDirect => Problem.Amp is { } amp && played.Plays(amp, new("direct"));

    public static SignalPath Of(RigProblem problem, Rig rig) => new(problem, rig);

    public IEnumerable<PathStop> Before(PathStop stop) => Stops.TakeWhile(other => other != stop);

    public IEnumerable<PathStop> After(PathStop stop) => Stops.SkipWhile(other => other != stop).Skip(1);
}
