using GigRig.Domain.Events;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;

namespace GigRig.TestKit.Building;

/// <summary>
/// Where every test thing starts: the plainest one that passes the checks, to be shaped by the extension methods beside this file, as in
/// <c>A.Device("echo").Sized(70, 120).Doing("delay").Drawing(60)</c>. Lengths in mm, currents in mA, masses in g, voltages in V.
/// </summary>
public static class A
{
    /// <summary>100 × 100 × 50 mm, 500 g, passive, without jacks, standing as it is described only.</summary>
    public static Device Device(string id) =>
        new(new(id), id, new(100.Mm, 100.Mm, 50.Mm), 500.G, [Turn.None], null, [], Bypass.True, [], []);

    /// <summary>Plain surface, 2 kg, plugs may stick out as usual, nothing else limited.</summary>
    public static Board Board(int width = 600, int depth = 300) =>
        new(new("board"), "board", width.Mm, depth.Mm, 2000.G, [], [], Overhang.Usual);

    /// <summary>Away from the board, 1 kg.</summary>
    public static Supply Supply(params Outlet[] outlets) =>
        new(new("supply"), "supply", 1000.G, SupplyMount.Off, null, [.. outlets]);

    /// <summary>9 V DC, centre negative, isolated, 100 mA.</summary>
    public static Outlet Outlet(string id) => new(id, [9.V], 100.MilliA);

    /// <summary>15 kg, no loop.</summary>
    public static Amp Amp() => new(new("amp"), "amp", 15_000.G, []);

    public static OffBoardItem OffBoard(string id) => new(new(id), id, 50.G, []);

    /// <summary>One patch lead of 15 cm with angled plugs.</summary>
    public static Lead Lead(string id = "lead") => new(new(id), id, LeadKind.Patch, 150.Mm, PlugShape.Angled, PlugShape.Angled, 1);

    public static Instrument Instrument(string id = "guitar") => new(new(id), id, "electric guitar");

    public static EventType Event() => new("night", [], [], EventLimits.None);

    /// <summary>A question about this board, with no gear and no needs yet.</summary>
    public static RigProblemDraft Draft(Board? board = null) => new() { Board = board ?? Board(), Event = Event() };

    /// <summary>Nothing on the board.</summary>
    public static Rig Rig() => Domain.Rigs.Rig.Empty;
}
