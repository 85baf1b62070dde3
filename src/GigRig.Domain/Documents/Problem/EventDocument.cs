using System.ComponentModel;
using GigRig.Domain.Events;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs.Checks;
using GigRig.Domain.Units;

namespace GigRig.Domain.Documents.Problem;

[Description("What the night needs.")]
public sealed record EventDocument
{
    [Within(1, Bounds.LongestName)]
    public string Name { get; init; } = "event";

    [Within(0, Bounds.MostNeeds)]
    public IReadOnlyList<NeedDocument>? Needs { get; init; }

    [Within(0, Bounds.MostSounds)]
    public IReadOnlyList<SoundDocument>? Sounds { get; init; }

    public LimitsDocument? Limits { get; init; }

    [Description("Which devices go between the amp's send and return.")]
    public ChainPolicy Chain { get; init; }

    public VenueDocument? Venue { get; init; }

    public static EventDocument Of(EventType night) => new()
    {
        Name = night.Name,
        Needs = night.Needs.OrNothing(NeedDocument.Of),
        Sounds = night.Sounds.OrNothing(SoundDocument.Of),
        Limits = LimitsDocument.Of(night.Limits),
        Chain = night.Chain,
        Venue = VenueDocument.Of(night.Venue),
    };

    public EventType ToEvent() => new(
        Name,
        Needs.ToValues(need => need.ToNeed()),
        Sounds.ToValues(sound => sound.ToSound()),
        Limits?.ToLimits() ?? EventLimits.None,
        Chain)
    {
        Venue = Venue?.ToVenue() ?? VenueMains.Unknown,
    };
}

[Description("One role wanted.")]
public sealed record NeedDocument
{
    [RoleKey]
    [Within(1, Gear.Role.MaxLength)]
    public required string Role { get; init; }

    public NeedLevel Level { get; init; }

    [Description("Counts for a want only.")]
    [Within(1, Need.MaxWeight)]
    public int Weight { get; init; } = Need.DefaultWeight;

    internal static NeedDocument Of(Need need) => new() { Role = need.Role.Key, Level = need.Level, Weight = need.Weight };

    internal Need ToNeed() => new(new(Role), Level, Weight);
}

[Description("Roles that must be on together.")]
public sealed record SoundDocument
{
    [Within(1, Bounds.LongestName)]
    public required string Name { get; init; }

    [RoleKey]
    [Within(1, Sound.MaxRoles)]
    public required IReadOnlyList<string> Roles { get; init; }

    public NeedLevel Level { get; init; }

    [Within(1, Need.MaxWeight)]
    public int Weight { get; init; } = Need.DefaultWeight;

    internal static SoundDocument Of(Sound sound) =>
        new() { Name = sound.Name, Roles = [.. sound.Roles.Select(role => role.Key)], Level = sound.Level, Weight = sound.Weight };

    internal Sound ToSound() => new(Name, Roles.ToValues(role => new Role(role)), Level, Weight);
}

[Description("What the event allows. Absent: no limit.")]
public sealed record LimitsDocument
{
    [Description("Grams, of all that is carried.")]
    [Within(0, Bounds.MostCarried)]
    public int? Mass { get; init; }

    [Description("Devices on the board.")]
    [Within(0, Bounds.MostDevices)]
    public int? Devices { get; init; }

    [Description("Per cent of the board kept empty.")]
    [Within(0, Bounds.MostFreeArea)]
    public int? FreeArea { get; init; }

    internal static LimitsDocument? Of(EventLimits limits) => limits == EventLimits.None
        ? null
        : new() { Mass = limits.Mass?.Value, Devices = limits.Devices, FreeArea = limits.FreeArea };

    internal EventLimits ToLimits() => new(Mass?.G, Devices, FreeArea);
}
