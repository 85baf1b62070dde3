using GigRig.Domain.Gear;
using GigRig.Domain.Units;

namespace GigRig.Domain.Rigs;

/// <summary>The space a plug takes beside a body: how far it stands out and how wide it is, 0–200 mm each.</summary>
public readonly record struct PlugSize(Millimetres Out, Millimetres Width);

/// <summary>Plug sizes by what they carry. The defaults are slim angled audio plugs and angled barrel power plugs (common practice, no published table).</summary>
public sealed record PlugSizes(PlugSize Audio, PlugSize Power)
{
    public static PlugSizes Usual { get; } = new(new(15.Mm, 16.Mm), new(13.Mm, 12.Mm));

    /// <summary>Room for the plugs of the patch leads that are used: the usual, or more where this shape stands out farther at the least.</summary>
    public static PlugSizes For(PlugShape patch) => Usual with { Audio = Usual.Audio with { Out = LeastOut(patch) > Usual.Audio.Out ? LeastOut(patch) : Usual.Audio.Out } };

    /// <summary>How far a plug stands out at the least. From memory of common plugs, no published figure: straight 45–65 mm, angled 22–30, slim 11–16.</summary>
    public static Millimetres LeastOut(PlugShape shape) => shape switch
    {
        PlugShape.Straight => 45.Mm,
        PlugShape.Angled => 22.Mm,
        _ => 11.Mm,
    };

    public PlugSize Of(JackUse use) => use == JackUse.Power ? Power : Audio;
}

/// <summary>How to plan, beside what the event asks.</summary>
/// <param name="Pin">Things that must come along.</param>
/// <param name="Ban">Things that must not.</param>
/// <param name="Fixed">Where devices, or a supply on top, must stand and nowhere else; that they come along is implied.</param>
/// <param name="Headroom">Fraction added to each draw, 0–5. A rule of thumb, not a published figure.</param>
/// <param name="SwitchSpacing">Least distance between foot switches of two devices; zero turns the rule off.</param>
/// <param name="Alternatives">How many further proposals to look for, 0–20.</param>
/// <param name="Wiring">What leads need beside the way they take.</param>
public sealed record PlanOptions
{
    public static PlanOptions Default { get; } = new();

    public ValueList<GearId> Pin { get; init; }

    public ValueList<GearId> Ban { get; init; }

    public ValueList<Placement> Fixed { get; init; }

    public TimeSpan TimeLimit { get; init; } = TimeSpan.FromSeconds(10);

    public decimal Headroom { get; init; }

    public PlugSizes Plugs { get; init; } = PlugSizes.Usual;

    public Millimetres SwitchSpacing { get; init; }

    public bool Arrange { get; init; } = true;

    public int Alternatives { get; init; }

    public WiringAllowances Wiring { get; init; } = WiringAllowances.Usual;
}
