using GigRig.Domain.Gear;
using GigRig.Domain.Units;

namespace GigRig.Domain.Events;

/// <summary>
/// Event types to start from; owners change them as they like. Which roles such a night asks for is common practice, no source; the weights and the limits
/// are ours.
/// </summary>
public static class ReadyEventTypes
{
    /// <summary>Somebody else's stage, a turn of a few songs: quick to set up.</summary>
    public static EventType JamNight { get; } = new(
        "Jam night",
        [Must("tuner"), Must("clean"), Must("drive.low"), Want("boost", 20)],
        [new("Rhythm", Roles("drive.low")), new("Solo", Roles("drive.low", "boost"), NeedLevel.Want, 10)],
        new EventLimits(Devices: 4));

    /// <summary>One's own songs night after night, out of a van: the record's sounds, packed small.</summary>
    public static EventType VanTour { get; } = new(
        "Van tour",
        [Must("tuner"), Must("clean"), Must("drive.high"), Must("boost"), Want("delay", 30), Want("modulation", 20), Want("equaliser", 10), Want("gate", 10)],
        [
            new("Riff", Roles("drive.high")),
            new("Lead", Roles("drive.high", "boost")),
            new("Lead with echo", Roles("drive.high", "boost", "delay"), NeedLevel.Want, 20),
            new("Quiet verse", Roles("clean", "modulation"), NeedLevel.Want, 10),
        ],
        new EventLimits(Mass: 30_000.G));

    /// <summary>Many styles in one evening, from dinner to dance floor.</summary>
    public static EventType WeddingFunction { get; } = new(
        "Wedding function",
        [
            Must("tuner"), Must("clean"), Must("drive.low"), Must("boost"), Must("compressor"), Must("delay"), Must("reverb"),
            Want("modulation", 30), Want("equaliser", 10), Want("filter", 10), Want("acoustic", 10), Want("volume", 5),
        ],
        [
            new("Dinner", Roles("clean", "compressor", "reverb")),
            new("Solo", Roles("drive.low", "boost", "delay")),
            new("First dance", Roles("clean", "modulation", "delay", "reverb"), NeedLevel.Want, 20),
            new("Dance floor", Roles("clean", "compressor", "filter"), NeedLevel.Want, 5),
        ],
        EventLimits.None);

    public static ValueList<EventType> All { get; } = [JamNight, VanTour, WeddingFunction];

    private static Need Must(string role) => new(new(role));

    private static Need Want(string role, int weight) => new(new(role), NeedLevel.Want, weight);

    private static ValueList<Role> Roles(params string[] keys) => keys.Select(key => new Role(key)).ToValueList();
}
