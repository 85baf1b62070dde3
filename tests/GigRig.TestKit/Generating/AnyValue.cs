using CsCheck;
using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Units;

namespace GigRig.TestKit.Generating;

/// <summary>Random small values within their limits, from which random things are made.</summary>
public static class AnyValue
{
    private static readonly string[] Roles = ["tuner", "gate", "boost", "drive", "drive.low", "drive.high", "delay", "reverb", "clean", "bird-song", "my.own.thing-2"];

    /// <summary>Letters of several scripts, quotes, angle brackets and signs beyond the basic plane: whatever may be typed into a name, and must come back.</summary>
    public static Gen<string> Name { get; } =
        Gen.OneOf("a", "Z", "7", " ", "é", "ß", "日", "🎸", "\"", "\\", "'", "<", "&", "/", "{").Array[1, 20].Select(parts => "N" + string.Concat(parts).Trim());

    public static Gen<Millimetres> Length { get; } = Gen.Int[1, 3000].Select(Millimetres.From);

    public static Gen<Grams> Mass { get; } = Gen.Int[0, 200_000].Select(Grams.From);

    public static Gen<Millivolts> Volts { get; } = Gen.Int[100, 60_000].Select(Millivolts.From);

    public static Gen<BodySize> Size { get; } = Gen.Select(Length, Length, Length, (width, depth, height) => new BodySize(width, depth, height));

    public static Gen<Role> Role { get; } = Gen.OneOf(Roles).Select(key => new Role(key));

    public static Gen<ValueList<Role>> DifferentRoles { get; } = Gen.OneOf(Roles).HashSet[1, 4].Select(keys => keys.Select(key => new Role(key)).ToValueList());

    public static Gen<ValueList<RoleFunction>> Functions { get; } =
        Gen.Select(Role, Gen.Int[1, 5], Gen.OneOf<string?>(null, "a", "channel"), (role, rating, section) => new RoleFunction(role, rating, section)).ListOf(4);

    public static Gen<CurrentType> CurrentType { get; } = Gen.Enum<CurrentType>();

    public static Gen<Polarity> Polarity { get; } = Gen.Enum<Polarity>();

    /// <summary>None to <paramref name="most"/> of them.</summary>
    public static Gen<ValueList<T>> ListOf<T>(this Gen<T> gen, int most) => gen.Array[0, most].Select(items => items.ToValueList());

    /// <summary>One of them or null.</summary>
    public static Gen<T?> OrNothing<T>(this Gen<T> gen)
        where T : struct => Gen.Nullable(gen, 0.3);
}
