using GigRig.Domain.Units;

namespace GigRig.Domain.Documents;

/// <summary>Between the plain numbers of the documents and the units of the domain.</summary>
internal static class Conversions
{
    /// <summary>Read with at most three decimals; what is far too large stays too large to pass the checks.</summary>
    public static Millivolts ToMillivolts(this decimal volts) => ((int)decimal.Clamp(volts * 1000, int.MinValue, int.MaxValue)).MilliV;

    public static decimal ToVolts(this Millivolts millivolts) => millivolts.Value / 1000m;

    /// <summary>Null for an empty list, so that it is left out of the text.</summary>
    public static IReadOnlyList<TOut>? OrNothing<TIn, TOut>(this ValueList<TIn> items, Func<TIn, TOut> convert) =>
        items.Count == 0 ? null : [.. items.Select(convert)];

    public static ValueList<TOut> ToValues<TIn, TOut>(this IReadOnlyList<TIn>? items, Func<TIn, TOut> convert) =>
        (items ?? []).Select(convert).ToValueList();
}
