using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Wiring;

namespace GigRig.Web.Sheets;

/// <summary>Noise advice in words.</summary>
internal static class NoiseWords
{
    public static string Of(RigProblem problem, DigitalNoise noise) =>
        $"{Named(problem, noise.Digital)} (digital) and {Named(problem, noise.Drives)} share a return at {(noise.Outlets.Count == 1 ? "outlet" : "outlets")} {string.Join(", ", noise.Outlets)}. "
        + "Clock noise can whine through a drive that way (common practice); if it does, give one of them an isolated outlet."
        + (noise.Guessed.Count == 0
            ? ""
            : $" That {Named(problem, noise.Guessed)} {(noise.Guessed.Count == 1 ? "is" : "are")} digital is a guess from role and draw; it can be said on the page of the device.");

    private static string Named(RigProblem problem, IEnumerable<GearId> ids) => string.Join(", ", ids.Select(problem.NameOf));
}
