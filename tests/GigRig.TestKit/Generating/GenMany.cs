using CsCheck;
using GigRig.Domain;

namespace GigRig.TestKit.Generating;

/// <summary>Of one generator, several; of a value, sometimes none.</summary>
public static class GenMany
{
    /// <summary>One of each index from zero.</summary>
    public static Gen<ValueList<T>> Each<T>(int count, Func<int, Gen<T>> one) =>
        Enumerable.Range(0, count).Aggregate(
            Gen.Const<ValueList<T>>([]),
            (before, index) => Gen.Select(before, one(index), (list, item) => (ValueList<T>)[.. list, item]));

    /// <summary>Null four times in five.</summary>
    public static Gen<T?> Seldom<T>(Gen<T> some)
        where T : struct => Gen.Frequency((4, Gen.Const((T?)null)), (1, some.Select(value => (T?)value)));
}
