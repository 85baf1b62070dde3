using System.Globalization;
using GigRig.Domain.Formulas;
using GigRig.Domain.Rigs;

namespace GigRig.Web.Sheets;

/// <summary>One device on its own battery, in words.</summary>
/// <param name="Time">How long it runs, as a range; says so where no draw is known.</param>
public sealed record BatteryLine(string Device, string Time)
{
    /// <summary>What <see cref="Time"/> rests on; a rule of thumb.</summary>
    public static string Basis { get; } =
        $"Counted for a 9 V block of {BatteryLife.LeastCapacity} to {BatteryLife.MostCapacity} mAh (common practice; cells scatter), the lesser end with {1 - BatteryLife.Derating:0 %} taken off for the load.";

    public static BatteryLine Of(RigProblem problem, HookUpLine line) => new(line.Title, TimeOf(problem, line));

    private static string TimeOf(RigProblem problem, HookUpLine line)
    {
        if (problem.FindDevice(line.Device)?.Power is not { Current.Value: > 0 } need)
            return "draw not known";
        var hours = BatteryLife.Range(capacity: null, need.Current);
        return $"about {Shown(hours.Least)} to {Shown(hours.Most)} hours at {need.Current}";
    }

    private static string Shown(double hours) => hours.ToString(hours < 10 ? "0.#" : "0", CultureInfo.InvariantCulture);
}
