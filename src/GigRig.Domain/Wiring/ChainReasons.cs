using GigRig.Domain.Gear;

namespace GigRig.Domain.Wiring;

/// <summary>Why a device usually stands where it does, in one sentence. Common practice among players; no standard says any of it.</summary>
internal static class ChainReasons
{
    private static readonly Dictionary<string, string> ByRole = new(StringComparer.Ordinal)
    {
        ["tuner"] = "Tuner first: it hears the cleanest signal, and muting it silences all the rest.",
        ["drive.fuzz"] = "Fuzz early: what comes from the guitar sets how it answers.",
        ["filter"] = "Filter before the drives: its sweep changes how hard they are hit. After them it would sweep wide and harsh.",
        ["pitch"] = "Pitch early: it follows a clean single note best.",
        ["acoustic"] = "Acoustic sound before the drives: it is shaped from the plain instrument.",
        ["compressor"] = "Compressor before the drives: it steadies what feeds them. After them it would lift their noise.",
        ["drive"] = "Drives before what shapes and repeats them: equaliser, modulation, echoes.",
        ["drive.low"] = "Low gain before high gain: it pushes the drive behind it.",
        ["drive.high"] = "High gain after low gain and before what shapes and repeats it.",
        ["clean"] = "Clean sound after the drives: it takes what they give as an amp would.",
        ["equaliser"] = "Equaliser after the drives: it shapes the tone and leaves the distortion as it is. Before them it would change the distortion.",
        ["boost"] = "Boost after the drives: a solo gets louder. Before them it would get dirtier.",
        ["gate"] = "Gate after the drives and before the echoes: it shuts off their noise and lets the tails ring.",
        ["modulation"] = "Modulation after the drives: its sweep stays clear. Before them it thickens and flattens.",
        ["volume"] = "Volume after the drives and before the echoes: it fades the sound and leaves the tails. First in line it acts like the guitar's own knob.",
        ["delay"] = "Delay after the drives: each repeat is a copy of the finished sound. Before them repeats would be driven again and smear.",
        ["reverb"] = "Reverb last of the effects: a room around a finished sound.",
        ["looper"] = "Looper at the end: it records everything before it.",
        ["direct"] = "Into the desk last: amp and cabinet voice come after all other effects.",
    };

    public static string Of(Device device, Role? role, ChainPart part, Instrument? instrument)
    {
        var entry = role is { } known ? RoleCatalogue.FindNearest(known) : null;
        return (entry, part) switch
        {
            ({ IsTimeEffect: true }, ChainPart.Loop) => "In the loop, behind the amp's own distortion: echoes and recordings stay clean copies of it.",
            (_, ChainPart.Loop) => "In the loop: it works on what the amp's preamp gives.",
            ({ Role.Key: "drive.fuzz" }, _) when device.WantsBarePickup => "Fuzz right behind the pickup: it wants nothing that buffers before it.",
            ({ Role.Key: "compressor" }, _) when instrument?.Family == InstrumentFamily.Bass => "Compressor early on a bass: it steadies every note and often stays on.",
            ({ Role.Key: ['d', 'r', 'i', 'v', 'e', ..] }, _) when instrument?.Family == InstrumentFamily.Bass => "Drive after the compressor. One that blends in the clean bass keeps the lows.",
            ({ } built, _) => Nearest(built.Role),
            _ => "A role of your own: after the drives, before the modulations.",
        };
    }

    private static string Nearest(Role role) => ByRole.TryGetValue(role.Key, out var reason) ? reason : Nearest(role.Wider!.Value);
}
