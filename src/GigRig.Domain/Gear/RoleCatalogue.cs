namespace GigRig.Domain.Gear;

/// <summary>
/// The built-in roles, in usual chain order, as a tree by the dots of their keys. Owners may add roles of their own; those take their place in the chain
/// from the nearest wider built-in role.
/// </summary>
/// <remarks>
/// The order is the one most players' guides give: tuner, fuzz that needs the bare pickup, filter, pitch, compressor, low-gain then high-gain drive,
/// equaliser and boost, gate, modulation, volume, delay, reverb, looper. Common practice; there is no standard for it.
/// </remarks>
public static class RoleCatalogue
{
    /// <summary>The chain rank of a role that neither is built in nor narrows one: after the drives, before the modulations.</summary>
    public const int RankOfOwnRoles = 95;

    /// <summary>Every built-in role, once, by chain rank.</summary>
    public static ValueList<RoleEntry> All { get; } =
    [
        Entry("tuner", "Tuner", 10, "AnalyserPlugin", "tuning", "clip-on"),
        Entry("drive.fuzz", "Fuzz", 20, "WaveshaperPlugin", "octave fuzz"),
        Entry("filter", "Filter", 30, "FilterPlugin", "wah", "auto-wah", "envelope filter"),
        Entry("pitch", "Pitch", 40, "PitchPlugin", "octave", "octaver", "harmoniser", "bend"),
        Entry("acoustic", "Acoustic sound", 45, "SimulatorPlugin", "acoustic simulator"),
        Entry("compressor", "Compressor", 50, "CompressorPlugin", "sustainer", "limiter"),
        Entry("drive", "Drive", 60, "DistortionPlugin", "overdrive", "distortion", "dirt"),
        Entry("drive.low", "Low gain drive", 60, "DistortionPlugin", "overdrive", "crunch", "breakup"),
        Entry("drive.high", "High gain drive", 70, "DistortionPlugin", "distortion", "lead", "metal"),
        Entry("clean", "Clean sound", 75, "AmplifierPlugin", "clean channel", "preamp"),
        Entry("equaliser", "Equaliser", 80, "EQPlugin", "equalizer", "eq", "tone", "graphic", "parametric"),
        Entry("boost", "Boost", 85, "AmplifierPlugin", "clean boost", "solo boost", "level"),
        Entry("gate", "Gate", 90, "GatePlugin", "noise gate", "noise suppressor"),
        Entry("modulation", "Modulation", 100, "ModulatorPlugin", "mod"),
        Entry("modulation.chorus", "Chorus", 100, "ChorusPlugin", "ensemble"),
        Entry("modulation.flanger", "Flanger", 100, "FlangerPlugin", "flange"),
        Entry("modulation.phaser", "Phaser", 100, "PhaserPlugin", "phase"),
        Entry("modulation.tremolo", "Tremolo", 100, "ModulatorPlugin", "trem"),
        Entry("modulation.vibrato", "Vibrato", 100, "ModulatorPlugin", "vibe"),
        Entry("modulation.rotary", "Rotary speaker", 100, "ModulatorPlugin", "rotating speaker"),
        Entry("volume", "Volume", 110, "AmplifierPlugin", "volume pedal", "swell"),
        Late("delay", "Delay", 120, "DelayPlugin", "echo"),
        Late("reverb", "Reverb", 130, "ReverbPlugin", "room", "hall", "plate", "spring"),
        // A looper records everything before it, so it follows delay and reverb wherever they go.
        Late("looper", "Looper", 140, "UtilityPlugin", "loop recorder"),
        Entry("direct", "Direct to the desk", 150, "SimulatorPlugin", "di", "cabinet simulation", "amp simulation"),
    ];

    private static readonly Dictionary<Role, RoleEntry> ByRole = All.ToDictionary(entry => entry.Role);

    /// <summary>The built-in role with exactly this key; null for an owner's own.</summary>
    public static RoleEntry? Find(Role role) => ByRole.GetValueOrDefault(role);

    /// <summary>The built-in role with this key or, failing that, the nearest wider one; null where there is none.</summary>
    public static RoleEntry? FindNearest(Role role) =>
        Find(role) ?? (role.Wider is { } wider ? FindNearest(wider) : null);

    /// <summary>The built-in roles one dot narrower.</summary>
    public static IEnumerable<RoleEntry> Narrower(Role role) => All.Where(entry => entry.Role.Wider == role);

    /// <summary>The title of a built-in role; the key itself for an owner's own.</summary>
    public static string TitleOf(Role role) => Find(role)?.Title ?? role.Key;

    public static int ChainRankOf(Role role) => FindNearest(role)?.ChainRank ?? RankOfOwnRoles;

    private static RoleEntry Entry(string key, string title, int rank, string pluginClass, params ReadOnlySpan<string> synonyms) =>
        new(new(key), title, ValueList.Create(synonyms), rank, false, pluginClass);

    private static RoleEntry Late(string key, string title, int rank, string pluginClass, params ReadOnlySpan<string> synonyms) =>
        Entry(key, title, rank, pluginClass, synonyms) with { IsTimeEffect = true };
}
