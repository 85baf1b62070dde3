namespace GigRig.Domain.Gear;

/// <summary>A fact of a thing that was filled in with what is usual, and stays marked until its owner says otherwise.</summary>
public enum Guess
{
    /// <summary>Width and depth.</summary>
    Size,
    Height,
    Mass,

    /// <summary>Which jacks there are, on which sides, and where.</summary>
    Jacks,

    /// <summary>Where the foot switches are.</summary>
    Switches,

    /// <summary>Voltage, kind of current and polarity.</summary>
    Voltage,
    Draw,

    /// <summary>What of a board's surface bears, and where nothing may stand.</summary>
    Surface,

    /// <summary>How far plugs may stick out over the edges of a board.</summary>
    Overhang,

    /// <summary>Where a supply sits.</summary>
    Mount,

    /// <summary>Which outlets share a return.</summary>
    Returns,

    /// <summary>What a lead is for.</summary>
    LeadKind,

    /// <summary>The plugs of a lead.</summary>
    Plugs,

    /// <summary>What an instrument is, and what it is wired like.</summary>
    Family,

    /// <summary>Whether an amp has a loop.</summary>
    Loop,
}
