using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;

namespace GigRig.Data;

/// <summary>What a page for others tells beside drawing, hook-up, audio order and pack list. Nothing of it unless the owner ticked it.</summary>
/// <param name="Notes">The owner's notes, on the rig and on the things in it.</param>
/// <param name="Values">What the things in it are worth.</param>
/// <param name="Places">Where each thing stands, in numbers, for somebody who builds the board.</param>
/// <param name="Unit">Of every length on the page.</param>
public sealed record LinkContent(bool Notes = false, bool Values = false, bool Places = false, LengthUnit Unit = LengthUnit.Millimetres)
{
    public static LinkContent Plain { get; } = new();
}

/// <summary>
/// What a holder of a link may see. It has no owner, of the owner's gear only what is in the rig, and notes and values only where they were
/// ticked, so that a page made from it can't show more.
/// </summary>
/// <param name="SavedUtc">When this arrangement was saved.</param>
/// <param name="Note">The owner's note on the rig; empty unless ticked.</param>
/// <param name="Belongings">Notes and values of things in the rig; empty unless ticked.</param>
public sealed record SharedRig(
    string Name, RigProblem Problem, Rig Rig, DateTime SavedUtc, bool ShowsPlaces, LengthUnit Unit, string Note, ValueList<SharedBelonging> Belongings);

/// <summary>What the owner chose to tell about a thing in the rig.</summary>
/// <param name="Note">Empty unless ticked.</param>
/// <param name="ValueCents">In hundredths of the owner's currency; null unless ticked, or where it was not said.</param>
public sealed record SharedBelonging(GearId Id, string Name, string Note, int? ValueCents);
