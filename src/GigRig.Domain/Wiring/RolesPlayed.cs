using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Wishes;

namespace GigRig.Domain.Wiring;

/// <summary>What each thing is there for in a rig: the functions by which it covers needs and sounds, in that order; for a device that covers none, its first.</summary>
internal sealed class RolesPlayed
{
    private readonly ILookup<GearId, Role> covered;

    private RolesPlayed(ILookup<GearId, Role> covered) => this.covered = covered;

    public static RolesPlayed In(RigProblem problem, Rig rig)
    {
        var coverage = Coverage.Of(problem, rig);
        return new(coverage.Needs.Select(need => need.Cover).OfType<Cover>()
            .Concat(coverage.Sounds.SelectMany(sound => sound.Covers ?? []))
            .ToLookup(cover => cover.Thing, cover => cover.Function.Role));
    }

    public ValueList<Role> Of(Device device) =>
        (covered[device.Id].Any() ? covered[device.Id].Distinct() : device.Functions.Take(1).Select(function => function.Role)).ToValueList();

    /// <summary>Only what it covers.</summary>
    public bool Plays(Amp amp, Role role) => covered[amp.Id].Any(played => played.Meets(role));
}
