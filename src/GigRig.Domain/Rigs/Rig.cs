using GigRig.Domain.Formulas;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Units;

namespace GigRig.Domain.Rigs;

/// <summary>Where a device or a supply stands: the front-left corner of its turned body.</summary>
public sealed record Placement(GearId Id, Point At, Turn Turn = Turn.None)
{
    /// <summary>As it reads in a sentence: <c>120, 40 mm, turned by 90°</c>.</summary>
    public Phrase Said => $"{At.X:bare}, {At.Y}{(Turn == Turn.None ? "" : $", turned by {(int)Turn}°")}";
}

/// <summary>How a device gets its power.</summary>
/// <param name="Outlets">None: from its own battery. One: alone, or shared through splitters where another feed names the same outlet. Several: joined.</param>
/// <param name="Join">How several outlets are joined.</param>
/// <param name="Volts">What arrives at the device; in a series pair the sum. Zero on battery.</param>
/// <param name="Settings">The voltage to set at each outlet, in the order of <paramref name="Outlets"/>.</param>
/// <param name="Reversed">Through a polarity-reversing lead.</param>
public sealed record Feed(GearId Device, ValueList<string> Outlets, OutletJoin Join, Millivolts Volts, ValueList<Millivolts> Settings, bool Reversed = false)
{
    public bool OnBattery => Outlets.Count == 0;

    /// <summary>What the settings give at the device: their sum in series, else the first; zero without any.</summary>
    public Millivolts Arriving => JoinedOutlets.Volts(Join, Settings);

    public static Feed FromBattery(GearId device) => new(device, [], OutletJoin.Single, Millivolts.Zero, []);
}

/// <summary>How the outlets of one feed are joined.</summary>
public enum OutletJoin
{
    Single,
    Parallel,
    Series,
}

/// <summary>Audio order, first to last: between instrument and amp input, and between send and return.</summary>
public sealed record Chain(ValueList<GearId> Front, ValueList<GearId> Loop)
{
    public static Chain Empty { get; } = new([], []);
}

/// <summary>One piece of advice that the musician has answered for this rig.</summary>
/// <param name="Advice">The id of the advice.</param>
/// <param name="Culprits">The things it is about, in any order. With other things it is another piece of advice.</param>
/// <param name="Note">Why, in the musician's words; may be empty, at most 1000 characters.</param>
public sealed record SilencedAdvice(string Advice, ValueList<GearId> Culprits, string Note)
{
    public bool Answers(string advice, ValueList<GearId> culprits) => Advice == advice && Culprits.ToHashSet().SetEquals(culprits);
}

/// <summary>What the musician builds: what stands where, what else comes along, what feeds what, and the audio order.</summary>
/// <param name="Placements">One for each device on the board.</param>
/// <param name="Supply">Null unless the supply stands on top of the board.</param>
/// <param name="OffBoard">The off-board things that come along.</param>
/// <param name="HookUp">One feed for each placed device that needs power.</param>
public sealed record Rig(ValueList<Placement> Placements, Placement? Supply, ValueList<GearId> OffBoard, ValueList<Feed> HookUp, Chain Chain)
{
    /// <summary>The advice the musician knows about and does not want to hear again.</summary>
    public ValueList<SilencedAdvice> Silenced { get; init; }

    public static Rig Empty { get; } = new([], null, [], [], Chain.Empty);

    /// <summary>Whether it is on the board or comes along beside it.</summary>
    public bool Holds(GearId id) => Placements.Any(placement => placement.Id == id) || OffBoard.Contains(id);
}
