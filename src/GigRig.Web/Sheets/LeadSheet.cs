using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.Domain.Wiring;

namespace GigRig.Web.Sheets;

/// <summary>One lead to plug in.</summary>
/// <param name="Mark">Its letter in the drawing; empty for a long lead.</param>
/// <param name="Needed">Empty where nobody measures it.</param>
/// <param name="Take">The owned lead, or what to get.</param>
/// <param name="Missing">Whether it must be got.</param>
/// <param name="Why">Which owned lead is long enough and yet not taken; empty where there is none.</param>
public sealed record LeadLine(string Mark, string From, string To, string Needed, string Take, bool Missing, string Why = "");

/// <summary>Every lead of a rig, in the order of the signal.</summary>
/// <param name="Shopping">What to buy or make, counted.</param>
/// <param name="Basis">What the needed lengths rest on; a rule of thumb.</param>
public sealed record LeadSheet(ValueList<LeadLine> Lines, ValueList<PackLine> Shopping, string Basis)
{
    public static LeadSheet Of(LeadPlan plan, LengthUnit unit)
    {
        var (problem, numbers, marks) = (plan.Problem, RigNumbers.Of(plan.Rig), 0);
        return new(plan.Hops.Select(LineOf).ToValueList(), Missing(plan, unit).ToValueList(), BasisOf(problem.Options.Wiring, unit));

        LeadLine LineOf(WiredHop wired) => new(
            wired.Hop.Kind == HopKind.Patch ? LeadMarks.Of(marks++) : "",
            LeadWords.End(problem, wired.Hop.From, numbers),
            LeadWords.End(problem, wired.Hop.To, numbers),
            wired.Needed > Millimetres.Zero ? LeadWords.Length(wired.Needed, unit) : "",
            TakeOf(wired, problem.Options, unit),
            wired.IsMissing,
            wired.WithoutRoom is { } lead ? $"{lead.Name}, {LeadWords.Length(lead.Length, unit)}, reaches, but there is no room for its {LeadWords.Plugs(lead)}." : "");
    }

    private static string BasisOf(WiringAllowances wiring, LengthUnit unit) =>
        $"A patch lead needs its way around the bodies, {LengthText.Format(wiring.Bend, unit)} of bend at each end and {LengthText.Format(wiring.Slack, unit)} of slack; "
        + $"a long one {LeadWords.Length(wiring.ToBoard, unit)} from the instrument to the board, {LeadWords.Length(wiring.ToAmp, unit)} from there to the amp or the desk. "
        + "Common practice, no source.";

    /// <summary>What is missing, by what to get.</summary>
    internal static IEnumerable<PackLine> Missing(LeadPlan plan, LengthUnit unit) =>
        plan.Missing.CountBy(wired => $"{NameOf(wired.Hop.Kind)}, {LeadWords.Length(StandardLeads.For(wired.Hop.Kind, wired.Needed) ?? wired.Needed, unit)}{WithPlugs(wired, plan.Problem.Options)}").Select(pair => new PackLine(pair.Value, pair.Key));

    private static string TakeOf(WiredHop wired, PlanOptions options, LengthUnit unit) => (wired.Lead, wired.Hop.Kind) switch
    {
        ({ } lead, _) => $"{lead.Name}, {LeadWords.Length(lead.Length, unit)}",
        (_, HopKind.DeskLine) => "the desk's own line: ask the engineer",
        (_, HopKind.Footswitch) => "its own lead",
        (_, HopKind.Patch) => $"{Bought(wired, options, unit)}make one of {LeadWords.Length(wired.Needed + options.Wiring.Swallowed + options.Wiring.Swallowed, unit)} of cable",
        _ => StandardLeads.For(wired.Hop.Kind, wired.Needed) is { } length ? $"buy {LeadWords.Length(length, unit)}{WithPlugs(wired, options)}" : $"have one made of {LeadWords.Length(wired.Needed, unit)}",
    };

    private static string Bought(WiredHop wired, PlanOptions options, LengthUnit unit) =>
        StandardLeads.For(wired.Hop.Kind, wired.Needed) is { } length ? $"buy {LeadWords.Length(length, unit)}{WithPlugs(wired, options)}, or " : "";

    /// <summary>Where owned plugs have no room: the shapes that do.</summary>
    private static string WithPlugs(WiredHop wired, PlanOptions options) => wired.WithoutRoom is null ? "" : $" with {LeadWords.PlugsWithin(options.Plugs.Audio.Out)}";

    private static string NameOf(HopKind kind) => kind switch
    {
        HopKind.Patch => "patch lead",
        HopKind.Loop => "loop lead",
        _ => "instrument lead",
    };
}
