using System.Globalization;
using GigRig.Web.Shared;

namespace GigRig.Web.Features.Gear.Care;

/// <summary>What some things are worth together, in the owner's currency.</summary>
/// <param name="Cents">Hundredths. A lead counts as one thing, however many of it there are.</param>
/// <param name="Unvalued">How many have no value.</param>
public sealed record ValueTotal(long Cents, int Unvalued)
{
    public static ValueTotal Of(IEnumerable<GearRow> rows)
    {
        var values = rows.Select(row => row.Ownership.ValueCents).ToList();
        return new(values.Sum(cents => (long)(cents ?? 0)), values.Count(cents => cents is null));
    }

    /// <summary>Such as <c>worth 1,234.50 together, 3 without a value</c>; empty where none has one.</summary>
    public string Sentence(int count) => Unvalued == count ? ""
        : $"worth {(Cents / 100m).ToString(Cents % 100 == 0 ? "N0" : "N2", CultureInfo.CurrentCulture)} together" + (Unvalued > 0 ? $", {Words.Count(Unvalued, "thing", "things")} without a value" : "");
}
