using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;

namespace GigRig.Web.Features.Workbench;

/// <summary>A rig under the musician's hands. Never changes: each move makes the next one.</summary>
/// <param name="Locked">Things that stay exactly where they stand, whoever arranges the rest.</param>
/// <param name="Aside">Devices taken off the board for now, where they stood, the last one first.</param>
public sealed record BoardEdit(Rig Rig, ValueList<GearId> Locked, ValueList<Placement> Aside)
{
    public static BoardEdit Of(Rig rig) => new(rig, [], []);

    public bool Locks(GearId id) => Locked.Contains(id);

    /// <summary>Where a device or the supply stands; null where it does not.</summary>
    public Placement? PlacementOf(GearId id) =>
        Rig.Supply?.Id == id ? Rig.Supply : Rig.Placements.FirstOrDefault(placement => placement.Id == id);

    /// <summary>Stands a thing elsewhere that stands somewhere already.</summary>
    public BoardEdit Standing(Placement placement) => this with
    {
        Rig = Rig.Supply?.Id == placement.Id
            ? Rig with { Supply = placement }
            : Rig with { Placements = Rig.Placements.Select(old => old.Id == placement.Id ? placement : old).ToValueList() },
    };
}
