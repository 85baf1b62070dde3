namespace GigRig.Web.Features.Gear.Care;

/// <summary>What of a library may want looking after.</summary>
public enum CareFilter
{
    /// <summary>In no saved rig.</summary>
    NeverUsed,

    /// <summary>Does what something else does too.</summary>
    Alike,

    /// <summary>Rests on guesses.</summary>
    Guessed,

    /// <summary>Lent out and due.</summary>
    Overdue,
}
