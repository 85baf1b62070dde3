using System.Globalization;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.Domain.Wiring;
using GigRig.Web.Shared;

namespace GigRig.Web.Sheets;

/// <summary>Leads and their ends in words.</summary>
internal static class LeadWords
{
    private const double MillimetresInAnInch = 25.4;
    private const double MillimetresInAFoot = 304.8;

    /// <summary>As leads are sold: <c>15 cm</c>, <c>4.5 m</c>; <c>6 in</c>, <c>10 ft</c>. Rounded up, so that it still reaches.</summary>
    public static string Length(Millimetres length, LengthUnit unit) => (unit, length.Value) switch
    {
        (LengthUnit.Inches, < 900) => $"{Math.Ceiling(length.Value / MillimetresInAnInch):0} in",
        (LengthUnit.Inches, _) => string.Create(CultureInfo.InvariantCulture, $"{Math.Ceiling(length.Value / MillimetresInAFoot * 2) / 2:0.#} ft"),
        (_, < 1000) => $"{(length.Value + 9) / 10} cm",
        _ => string.Create(CultureInfo.InvariantCulture, $"{Math.Ceiling(length.Value / 100.0) / 10:0.#} m"),
    };

    /// <summary>Such as <c>straight plugs</c> or <c>straight and slim plugs</c>.</summary>
    public static string Plugs(Lead lead) => string.Join(" and ", new[] { lead.FirstPlug, lead.SecondPlug }.Distinct().Select(plug => Words.Of(plug).ToLowerInvariant())) + " plugs";

    /// <summary>The plugs that stand out no farther than there is room for, such as <c>angled or slim plugs</c>.</summary>
    public static string PlugsWithin(Millimetres room) =>
        string.Join(" or ", Enum.GetValues<PlugShape>().Where(plug => plug == PlugShape.Slim || PlugSizes.LeastOut(plug) <= room).Select(plug => Words.Of(plug).ToLowerInvariant())) + " plugs";

    public static string End(RigProblem problem, HopEnd end, IReadOnlyDictionary<GearId, int> numbers) => end.Thing switch
    {
        HopThing.Instrument => end.Id is { } id ? problem.NameOf(id) : "instrument",
        HopThing.Desk => problem.Amp is null ? "desk or box for it" : "desk",
        HopThing.Footswitch => "amp's foot switch",
        HopThing.Amp => $"{problem.NameOf(end.Id!.Value)}, {Jack(end.Jack)}",
        _ => $"{(numbers.TryGetValue(end.Id!.Value, out var number) ? $"{number} " : "")}{problem.NameOf(end.Id.Value)}, {Jack(end.Jack)}{Which(problem.FindDevice(end.Id.Value), end)}",
    };

    private static string Jack(JackUse use) => use switch
    {
        JackUse.In => "input",
        JackUse.Out => "output",
        JackUse.Control => "foot switch",
        _ => use.ToString().ToLowerInvariant(),
    };

    /// <summary>Told where there are several of a kind.</summary>
    private static string Which(Device? device, HopEnd end) => device?.Jacks.Count(jack => jack.Use == end.Jack) > 1 ? $" {end.Number + 1}" : "";
}
