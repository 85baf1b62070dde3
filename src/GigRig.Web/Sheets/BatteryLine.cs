using System.Globalization;
using GigRig.Domain.Formulas;
using GigRig.Domain.Rigs;

namespace GigRig.Web.Sheets;

/// <summary>One device on its own battery, in words.</summary>
/// <param name="Time">How long it runs, as a range; says so where no draw is known.</param>
/// <param name="Capacity">What was counted with, and whether the owner said so.</param>
public sealed record BatteryLine(string Device, string Time, string Capacity)
{
    /// <summary>What the times rest on; a rule of thumb.</summary>
    public static string Basis { get; } = string.Create(
        CultureInfo.InvariantCulture,
        $"A rule of thumb: capacity over draw, and at the lesser end {1 - BatteryLife.Derating:0 %} off for the load. What is assumed can be said on the page of the device. Cells scatter: carry a fresh spare, and unplug the input between sets, for a lead in it keeps the battery on.");

    public static BatteryLine Of(RigProblem problem, HookUpLine line)
    {
        var need = problem.FindDevice(line.Device)?.Power;
        var capacity = need?.BatteryCapacity is { } known ? $"{known} mAh" : $"assumed: 9 V block of {BatteryLife.LeastCapacity}–{BatteryLife.MostCapacity} mAh";
        if (need is not { Current.Value: > 0 })
            return new(line.Title, "draw not known", capacity);
        var hours = BatteryLife.Range(need.BatteryCapacity, need.Current);
        return new(line.Title, $"about {Shown(hours.Least)} to {Shown(hours.Most)} hours at {need.Current}", capacity);
    }

    private static string Shown(double hours) => hours.ToString(hours < 10 ? "0.#" : "0", CultureInfo.InvariantCulture);
}
