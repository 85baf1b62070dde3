using GigRig.Data;
using GigRig.Domain.Units;

namespace GigRig.Web.Features.Rigs.Links;

/// <summary>How long a link works.</summary>
public enum LinkTime
{
    UntilRevoked,
    Day,
    Week,
    Month,
    Year,
}

/// <summary>What is ticked and typed for a link, or for a copy in one file.</summary>
public sealed class LinkForm
{
    public string Name { get; set; } = "Band";

    public LinkTime Time { get; set; } = LinkTime.Month;

    /// <summary>Whether it shows the rig as it is now for good.</summary>
    public bool Frozen { get; set; }

    public bool Notes { get; set; }

    public bool Values { get; set; }

    public bool Places { get; set; }

    /// <param name="version">The latest of the rig; what a frozen link shows.</param>
    public NewLink ToLink(DateTime now, int version, LengthUnit unit) =>
        new(Name.Trim(), ExpiryFrom(now), new(Notes, Values, Places, unit), Frozen ? version : null);

    public static string WordsOf(LinkTime time) => time switch
    {
        LinkTime.Day => "one day",
        LinkTime.Week => "one week",
        LinkTime.Month => "one month",
        LinkTime.Year => "one year",
        _ => "until I revoke it",
    };

    private DateTime? ExpiryFrom(DateTime now) => Time switch
    {
        LinkTime.Day => now.AddDays(1),
        LinkTime.Week => now.AddDays(7),
        LinkTime.Month => now.AddMonths(1),
        LinkTime.Year => now.AddYears(1),
        _ => null,
    };
}
