using System.ComponentModel;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rigs.Checks;
using GigRig.Domain.Units;

namespace GigRig.Domain.Documents.Problem;

[Description("How to plan, beside what the event asks.")]
public sealed record OptionsDocument
{
    [Description("Ids of things that must come along.")]
    public IReadOnlyList<string>? Pin { get; init; }

    [Description("Ids of things that must not.")]
    public IReadOnlyList<string>? Ban { get; init; }

    [Description("Where devices, or a supply on top, must stand and nowhere else. That they come along is implied.")]
    [Within(0, Bounds.MostDevices + 1)]
    public IReadOnlyList<PlacementDocument>? Fixed { get; init; }

    [Description("Milliseconds.")]
    [Within(Bounds.LeastTimeLimit, Bounds.MostTimeLimit)]
    public int TimeLimit { get; init; } = (int)PlanOptions.Default.TimeLimit.TotalMilliseconds;

    [Description("Fraction added to each draw; a rule of thumb.")]
    [Within(0, Bounds.MostHeadroom)]
    public decimal Headroom { get; init; }

    public PlugsDocument? Plugs { get; init; }

    [Description("Least millimetres between the foot switches of two devices; 0 turns the rule off.")]
    [Within(0, Bounds.MostSwitchSpacing)]
    public int SwitchSpacing { get; init; }

    [Description("Whether to shorten the leads as well.")]
    public bool Arrange { get; init; } = true;

    [Description("How many further proposals to look for.")]
    [Within(0, Bounds.MostAlternatives)]
    public int Alternatives { get; init; }

    [Description("Absent: bends of 15, slack 20, 25 in each plug, 6000 to the board, 3000 to the amp.")]
    public WiringDocument? Wiring { get; init; }

    internal static OptionsDocument Of(PlanOptions options) => new()
    {
        Pin = options.Pin.OrNothing(id => id.Value),
        Ban = options.Ban.OrNothing(id => id.Value),
        Fixed = options.Fixed.OrNothing(PlacementDocument.Of),
        TimeLimit = (int)options.TimeLimit.TotalMilliseconds,
        Headroom = options.Headroom,
        Plugs = PlugsDocument.Of(options.Plugs),
        SwitchSpacing = options.SwitchSpacing.Value,
        Arrange = options.Arrange,
        Alternatives = options.Alternatives,
        Wiring = WiringDocument.Of(options.Wiring),
    };

    internal PlanOptions ToOptions() => new()
    {
        Pin = Pin.ToValues(id => new GearId(id)),
        Ban = Ban.ToValues(id => new GearId(id)),
        Fixed = Fixed.ToValues(placement => placement.ToPlacement()),
        TimeLimit = TimeSpan.FromMilliseconds(TimeLimit),
        Headroom = Headroom,
        Plugs = Plugs?.ToPlugs() ?? PlugSizes.Usual,
        SwitchSpacing = SwitchSpacing.Mm,
        Arrange = Arrange,
        Alternatives = Alternatives,
        Wiring = Wiring?.ToWiring() ?? WiringAllowances.Usual,
    };
}

[Description("The room plugs take beside a body.")]
public sealed record PlugsDocument
{
    [Description("Absent: 15 by 16 mm.")]
    public PlugDocument? Audio { get; init; }

    [Description("Absent: 13 by 12 mm.")]
    public PlugDocument? Power { get; init; }

    internal static PlugsDocument? Of(PlugSizes plugs) => plugs == PlugSizes.Usual
        ? null
        : new() { Audio = PlugDocument.Of(plugs.Audio), Power = PlugDocument.Of(plugs.Power) };

    internal PlugSizes ToPlugs() => new(Audio?.ToPlug() ?? PlugSizes.Usual.Audio, Power?.ToPlug() ?? PlugSizes.Usual.Power);
}

[Description("How far a plug stands out, and how wide it is. Millimetres.")]
public sealed record PlugDocument
{
    [Within(0, Bounds.MostPlug)]
    public required int Out { get; init; }

    [Within(0, Bounds.MostPlug)]
    public required int Width { get; init; }

    internal static PlugDocument Of(PlugSize plug) => new() { Out = plug.Out.Value, Width = plug.Width.Value };

    internal PlugSize ToPlug() => new(Out.Mm, Width.Mm);
}
