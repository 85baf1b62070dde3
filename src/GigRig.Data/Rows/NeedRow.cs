using GigRig.Domain;
using GigRig.Domain.Events;
using GigRig.Domain.Gear;

namespace GigRig.Data.Rows;

/// <summary>One need inside an event type's JSON column.</summary>
internal sealed class NeedRow
{
    public string Role { get; set; } = "";

    public NeedLevel Level { get; set; }

    public int Weight { get; set; }

    public static NeedRow From(Need need) => new() { Role = need.Role.Key, Level = need.Level, Weight = need.Weight };

    public Need ToNeed() => new(new Role(Role), Level, Weight);
}

/// <summary>One sound inside an event type's JSON column.</summary>
internal sealed class SoundRow
{
    public string Name { get; set; } = "";

    public List<string> Roles { get; set; } = [];

    public NeedLevel Level { get; set; }

    public int Weight { get; set; }

    public static SoundRow From(Sound sound) => new()
    {
        Name = sound.Name,
        Roles = [.. sound.Roles.Select(role => role.Key)],
        Level = sound.Level,
        Weight = sound.Weight,
    };

    public Sound ToSound() => new(Name, Roles.Select(key => new Role(key)).ToValueList(), Level, Weight);
}
