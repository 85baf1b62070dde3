using GigRig.Domain.Rigs;
using GigRig.Domain.Wiring.Advising;

namespace GigRig.Domain.Wiring;

/// <summary>All that experienced players would say about a chain. Apart from the rules: a rig may go against all of it and still be built and played.</summary>
public static class ChainAdvice
{
    /// <summary>From the instrument to the desk, then what feeds it.</summary>
    internal static IReadOnlyList<IAdvice> All { get; } =
    [
        new BarePickupAdvice(),
        new LateBufferAdvice(),
        new KeyboardLevelAdvice(),
        new CompressorAfterDriveAdvice(),
        new GateBeforeNoiseAdvice(),
        new VolumeBeforeDriveAdvice(),
        new VolumeAfterEchoAdvice(),
        new EchoBeforeDriveAdvice(),
        new EchoBeforeAmpDriveAdvice(),
        new MonoIntoStereoAdvice(),
        new StereoCollapsedAdvice(),
        new LineSendAdvice(),
        new ParallelWetAdvice(),
        new ParallelWholeAdvice(),
        new FourCableHumAdvice(),
        new NoCabinetAdvice(),
        new BassLineAdvice(),
        new DigitalNoiseAdvice(),
    ];

    /// <summary>Everything there is to say, silenced or not, each with the musician's answer.</summary>
    public static ValueList<HeardAdvice> Of(RigProblem problem, Rig rig)
    {
        var path = SignalPath.Of(problem, rig);
        return All.SelectMany(advice => advice.About(path))
            .Select(advice => new HeardAdvice(advice, rig.Silenced.FirstOrDefault(silenced => silenced.Answers(advice.Id, advice.Culprits))))
            .ToValueList();
    }
}
