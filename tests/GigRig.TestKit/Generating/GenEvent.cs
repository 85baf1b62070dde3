using CsCheck;
using GigRig.Domain;
using GigRig.Domain.Events;
using GigRig.Domain.Gear;
using GigRig.Domain.Units;

namespace GigRig.TestKit.Generating;

/// <summary>Nights with up to four needs and two sounds, more wants than musts.</summary>
public static class GenEvent
{
    private static readonly Gen<NeedLevel> Level = Gen.Frequency((2, Gen.Const(NeedLevel.Want)), (1, Gen.Const(NeedLevel.Must)));

    public static Gen<Need> Need { get; } = Gen.Select(GenGear.Role, Level, Gen.Int[1, 9], (role, level, weight) => new Need(role, level, weight));

    public static Gen<Sound> Sound(int index) =>
        Gen.Select(GenGear.Role.Array[1, 3], Level, Gen.Int[1, 9], (roles, level, weight) => new Sound($"Sound {index}", roles.Distinct().ToValueList(), level, weight));

    public static Gen<EventLimits> Limits { get; } = Gen.Frequency(
        (3, Gen.Const(EventLimits.None)),
        (1, Gen.Select(
            GenMany.Seldom(Gen.Int[0, 15].Select(kilos => (1000 * kilos).G)),
            GenMany.Seldom(Gen.Int[0, 4]),
            GenMany.Seldom(Gen.Int[0, 90]),
            (mass, devices, free) => new EventLimits(mass, devices, free))));

    public static Gen<EventType> Small { get; } =
        from needs in Need.Array[0, 4]
        from count in Gen.Int[0, 2]
        from sounds in GenMany.Each(count, Sound)
        from limits in Limits
        from chain in Gen.Enum<ChainPolicy>()
        select new EventType("Night", needs.DistinctBy(need => need.Role).ToValueList(), sounds, limits, chain);
}
