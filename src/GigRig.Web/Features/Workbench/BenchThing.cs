using GigRig.Domain;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.Domain.Units;
using GigRig.Web.Drawing;

namespace GigRig.Web.Features.Workbench;

/// <summary>Something on the board as the drawing and the list beside it show it.</summary>
/// <param name="Body">As drawn, with its number.</param>
public sealed record BenchThing(SceneBody Body, Placement Placement, bool Locked, bool Removable, ValueList<Violation> Faults)
{
    /// <summary>Everything that stands, by number.</summary>
    public static IReadOnlyList<BenchThing> On(BoardEditor editor, BoardScene scene) =>
    [
        .. from body in scene.Bodies
           let placement = editor.Edit.PlacementOf(body.Id)
           where placement is not null
           select new BenchThing(body, placement, editor.Edit.Locks(body.Id), editor.IsRemovable(body.Id), editor.FaultsOf(body.Id).ToValueList()),
    ];

    /// <summary>For those who hear it.</summary>
    public string SpokenName(LengthUnit unit)
    {
        var turned = Placement.Turn == Domain.Geometry.Turn.None ? "" : $", turned {(int)Placement.Turn}°";
        var locked = Locked ? ", locked" : "";
        var faults = string.Concat(Faults.Select(fault => $". {fault.Sentence.In(unit)}"));
        return $"{Body.Number}: {Body.Name}, at {EditWords.PlaceOf(Placement.At, unit)}{turned}{locked}{faults}";
    }
}
