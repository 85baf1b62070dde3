using System.ComponentModel;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs.Checks;
using GigRig.Domain.Units;

namespace GigRig.Domain.Documents.Problem;

[Description("What stands under the feet. Millimetres and grams; the origin is its front-left corner as the player stands at it.")]
public sealed record BoardDocument
{
    public const string DefaultId = "board";

    [Within(1, GearId.MaxLength)]
    public string? Id { get; init; }

    [Within(1, Bounds.LongestName)]
    public string? Name { get; init; }

    [Within(Bounds.LeastSize, Bounds.MostSize)]
    public required int Width { get; init; }

    [Within(Bounds.LeastSize, Bounds.MostSize)]
    public required int Depth { get; init; }

    [Within(0, Bounds.MostMass)]
    public int Mass { get; init; }

    [Description("Bands along the whole width that bodies bear on. Absent: a plain surface.")]
    [Within(0, Bounds.MostRails)]
    public IReadOnlyList<RailDocument>? Rails { get; init; }

    [Description("Where neither body nor plug may be.")]
    [Within(0, Bounds.MostKeepOuts)]
    public IReadOnlyList<AreaDocument>? KeepOut { get; init; }

    public OverhangDocument? Overhang { get; init; }

    [Description("Grams. Absent: no limit.")]
    [Within(0, Bounds.MostMass)]
    public int? MaxLoad { get; init; }

    public ClearanceDocument? Clearance { get; init; }

    public static BoardDocument Of(Board board) => new()
    {
        Id = board.Id.Value,
        Name = board.Name,
        Width = board.Width.Value,
        Depth = board.Depth.Value,
        Mass = board.Mass.Value,
        Rails = board.Rails.OrNothing(rail => new RailDocument { From = rail.From.Value, To = rail.To.Value }),
        KeepOut = board.KeepOuts.OrNothing(AreaDocument.Of),
        Overhang = OverhangDocument.Of(board.Overhang),
        MaxLoad = board.MaxLoad?.Value,
        Clearance = ClearanceDocument.Of(board),
    };

    public Board ToBoard() => new(
        new(Id ?? DefaultId),
        Name ?? Id ?? DefaultId,
        Width.Mm,
        Depth.Mm,
        Mass.G,
        Rails.ToValues(rail => new Rail(rail.From.Mm, rail.To.Mm)),
        KeepOut.ToValues(area => area.ToRect()),
        (Overhang ?? new()).ToOverhang(),
        MaxLoad?.G,
        Clearance?.Under?.Mm,
        Clearance?.Over?.Mm);
}
