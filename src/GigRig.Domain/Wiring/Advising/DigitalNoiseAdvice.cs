using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;

namespace GigRig.Domain.Wiring.Advising;

internal sealed class DigitalNoiseAdvice : IAdvice
{
    public string Id => AdviceIds.DigitalNoise;

    public string Sentence => "Digital devices and drives do not share a power return.";

    public string Basis => "Common practice: clock noise travels along a shared return, and a drive makes it loud. Where nobody said what is digital it is guessed: delay, reverb, looper or pitch from 50 mA.";

    public IEnumerable<Advice> About(SignalPath path) => DigitalNoise.Of(path.Problem, path.Rig)
        .Select(noise => new Advice(Id, [.. noise.Digital, .. noise.Drives], SentenceOf(path.Problem, noise)));

    private static string SentenceOf(RigProblem problem, DigitalNoise noise) =>
        $"{Named(problem, noise.Digital)} (digital) and {Named(problem, noise.Drives)} share a return at {(noise.Outlets.Count == 1 ? "outlet" : "outlets")} {string.Join(", ", noise.Outlets)}. "
        + "Clock noise can whine through a drive that way; if it does, give one of them an isolated outlet."
        + (noise.Guessed.Count == 0
            ? ""
            : $" That {Named(problem, noise.Guessed)} {(noise.Guessed.Count == 1 ? "is" : "are")} digital is a guess from role and draw; it can be said on the page of the device.");

    private static string Named(RigProblem problem, IEnumerable<GearId> ids) => string.Join(", ", ids.Select(problem.NameOf));
}
