using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.Web.Shared;

namespace GigRig.Web.Guesses;

/// <summary>What was guessed of a thing and what hangs on it, in words and with the thing's own numbers.</summary>
public static class GuessWords
{
    public static string NameOf(Guess guess) => guess switch
    {
        Guess.Size => "Width and depth",
        Guess.Height => "Height",
        Guess.Mass => "Mass",
        Guess.Jacks => "Plug sides",
        Guess.Switches => "Foot switches",
        Guess.Voltage => "Voltage and polarity",
        Guess.Draw => "Draw",
        Guess.Surface => "Surface",
        Guess.Overhang => "Overhang",
        Guess.Mount => "Where it sits",
        Guess.Returns => "Isolated outlets",
        Guess.LeadKind => "Kind of lead",
        Guess.Family => "Kind of instrument",
        Guess.Loop => "Loop",
        _ => guess.ToString(),
    };

    /// <summary>Such as <c>width and depth, mass, plug sides</c>.</summary>
    public static string List(IEnumerable<Guess> guesses) => string.Join(", ", guesses.Select(NameOf).Select(name => char.ToLowerInvariant(name[0]) + name[1..]));

    /// <summary>What was taken, and what it may change; whole sentences.</summary>
    /// <param name="thing">A device, a board, a supply or an off-board item.</param>
    public static string EffectOn(object thing, Guess guess, LengthUnit unit) => (guess, thing) switch
    {
        (Guess.Size, Device device) => Size(device, unit),
        (Guess.Height, Device device) => $"Taken as {LengthText.Format(device.Size.Height, unit)}. Counts only under a lid.",
        (Guess.Height, _) => "Taken as what is usual. Counts only where it sits under the board or under a lid.",
        (Guess.Mass, _) => "Taken as what is usual. Counts where an event limits what is carried, or a board what it bears.",
        (Guess.Jacks, Device device) => Jacks(device, unit),
        (Guess.Switches, _) => "Taken as in a row near the front. Boxes are stood so that the switches most in use are easy to reach, and apart where a least distance is asked for.",
        (Guess.Voltage, Device { Power: { } power }) => $"Taken as {power.Min} DC, centre negative, as most are. A wrong voltage or polarity can destroy it: look at its label before you plug it in.",
        (Guess.Draw, Device { Power: { } power }) => $"Taken as {power.Current}. If it draws more, the outlet that is chosen for it may be too weak.",
        (Guess.Surface, _) => "Taken as plain: things may stand anywhere, on no rails, with nothing in the way.",
        (Guess.Overhang, Board board) => $"Plugs may stick out {LengthText.Format(board.Overhang.Rear, unit)} at the rear, left and right, and not at all at the front.",
        (Guess.Mount, Supply supply) => supply.Mount == SupplyMount.Off ? "Taken as lying beside the board, where it takes no room. Give its size to put it under or on the board." : "Taken as sitting under the board, where it takes no room from the devices.",
        (Guess.Returns, _) => "Every outlet taken as having a return of its own. If outlets share one, a centre-positive device beside others on it would short the supply: its papers say which are isolated.",
        (Guess.LeadKind, Lead lead) => $"Taken as {LeadOf(lead.Kind)}, by its name and length. It is wired with as that alone.",
        (Guess.Plugs, Lead lead) => $"Taken as {PlugsOf(lead)}. Plugs that stick out more may not fit where things stand close.",
        (Guess.Family, Instrument instrument) => $"Taken by its name as wired like a {Words.Of(instrument.Family).ToLowerInvariant()}. Basses keep their lows, keyboards give line level in stereo, and their chains are ordered and wired for that.",
        (Guess.Loop, _) => "Taken as an amp without one. If it has a send and a return, say so: delay and reverb can then go behind its distortion.",
        _ => "Taken as what is usual.",
    };

    /// <summary>Such as <c>a patch lead</c>.</summary>
    public static string LeadOf(LeadKind kind) => kind == LeadKind.Instrument ? "an instrument lead" : $"a {Words.Of(kind).ToLowerInvariant()} lead";

    /// <summary>Such as <c>angled at both ends</c>.</summary>
    public static string PlugsOf(Lead lead) => lead.FirstPlug == lead.SecondPlug
        ? $"{Words.Of(lead.FirstPlug).ToLowerInvariant()} at both ends"
        : $"{Words.Of(lead.FirstPlug).ToLowerInvariant()} at one end and {Words.Of(lead.SecondPlug).ToLowerInvariant()} at the other";

    private static string Size(Device device, LengthUnit unit)
    {
        var taken = $"Taken from the word for it as {Measures.Footprint(device.Size.Width, device.Size.Depth, unit)}.";
        return WhatIf.AtItsLargest(device) is { } largest
            ? $"{taken} Boxes of that word go up to {Measures.Footprint(largest.Size.Width, largest.Size.Depth, unit)}, so it may need {LengthText.Format(largest.Size.Width - device.Size.Width, unit)} more across and {LengthText.Format(largest.Size.Depth - device.Size.Depth, unit)} more front to rear."
            : $"{taken} How much such boxes differ is not known here: measure it.";
    }

    private static string Jacks(Device device, LengthUnit unit)
    {
        var (across, deep) = Room(device);
        var (otherAcross, otherDeep) = Room(WhatIf.WithPlugsAtTheRear(device));
        var taken = $"Plug sides unknown: taken as {Sides(device)}; with plugs it needs {Measures.Footprint(across, deep, unit)}.";
        return (across, deep) == (otherAcross, otherDeep) ? taken
            : $"{taken} With all plugs at the rear it would need {Measures.Footprint(otherAcross, otherDeep, unit)}: {Difference(otherAcross - across, unit)} across, {Difference(otherDeep - deep, unit)} front to rear.";
    }

    private static string Sides(Device device) =>
        string.Join(", ", device.Jacks.Select(jack => $"{Words.Of(jack.Use).ToLowerInvariant()} {(jack.Side is Side.Left or Side.Right ? jack.Side.ToString().ToLowerInvariant() : $"at the {jack.Side.ToString().ToLowerInvariant()}")}"));

    private static string Difference(Millimetres by, LengthUnit unit) => by.Value switch
    {
        0 => "the same",
        > 0 => $"{LengthText.Format(by, unit)} more",
        _ => $"{LengthText.Format(Millimetres.Zero - by, unit)} less",
    };

    /// <summary>The upright rectangle around body and plugs.</summary>
    private static (Millimetres Across, Millimetres Deep) Room(Device device)
    {
        var parts = Outline.Of(device, PlugSizes.Usual).Plugs.Append(new Rect(default, default, device.Size.Width, device.Size.Depth)).ToList();
        return (parts.Max(part => part.Right) - parts.Min(part => part.X), parts.Max(part => part.Rear) - parts.Min(part => part.Y));
    }
}
