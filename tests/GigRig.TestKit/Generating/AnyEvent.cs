using CsCheck;
using GigRig.Domain;
using GigRig.Domain.Events;
using GigRig.Domain.Gear;

namespace GigRig.TestKit.Generating;

/// <summary>Random event types that pass the checks.</summary>
public static class AnyEvent
{
    private static Gen<ValueList<Need>> Needs { get; } =
        from roles in AnyValue.DifferentRoles
        from levels in Gen.Enum<NeedLevel>().Array[roles.Count]
        from weights in Gen.Int[1, Need.MaxWeight].Array[roles.Count]
        select roles.Select((role, i) => new Need(role, levels[i], weights[i])).ToValueList();

    private static Gen<Sound> Sound { get; } = Gen.Select(
        AnyValue.DifferentRoles, Gen.Enum<NeedLevel>(), Gen.Int[1, Need.MaxWeight], (roles, level, weight) => new Sound("Sound", roles, level, weight));

    public static Gen<EventType> EventType { get; } =
        from name in AnyValue.Name
        from needs in Needs
        from sounds in Sound.ListOf(3)
        from limits in Gen.Select(AnyValue.Mass.OrNothing(), Gen.Int[0, 40].OrNothing(), Gen.Int[0, 100].OrNothing())
        from chain in Gen.Enum<ChainPolicy>()
        from venue in Gen.Select(Gen.Int[50, 500].OrNothing(), Gen.Enum<MainsPlug>().OrNothing(), (volts, socket) => new VenueMains(volts, socket))
        select new EventType(name, needs, Numbered(sounds), new(limits.Item1, limits.Item2, limits.Item3), chain) { Venue = venue };

    private static ValueList<Sound> Numbered(ValueList<Sound> sounds) =>
        sounds.Select((sound, number) => sound with { Name = $"{sound.Name} {number + 1}" }).ToValueList();
}
