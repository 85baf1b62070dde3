namespace GigRig.Domain.Wiring;

/// <summary>The stable names of the advice, as they are kept with a rig where it is silenced, and as they stand in docs/wiring.md.</summary>
public static class AdviceIds
{
    public const string BarePickup = "bare-pickup";
    public const string LateBuffer = "late-buffer";
    public const string KeyboardLevel = "keyboard-level";
    public const string CompressorAfterDrive = "compressor-after-drive";
    public const string GateBeforeNoise = "gate-before-noise";
    public const string VolumeBeforeDrive = "volume-before-drive";
    public const string VolumeAfterEcho = "volume-after-echo";
    public const string EchoBeforeDrive = "echo-before-drive";
    public const string EchoBeforeAmpDrive = "echo-before-amp-drive";
    public const string MonoIntoStereo = "mono-into-stereo";
    public const string StereoCollapsed = "stereo-collapsed";
    public const string LineSend = "line-send";
    public const string ParallelWet = "parallel-wet";
    public const string ParallelWhole = "parallel-whole";
    public const string FourCableHum = "four-cable-hum";
    public const string NoCabinet = "no-cabinet";
    public const string BassLine = "bass-line";
    public const string DigitalNoise = "digital-noise";
}
