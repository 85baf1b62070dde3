using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.Web.Shared.Forms;

namespace GigRig.Web.Features.Gear.Forms;

public sealed class RailRow
{
    public string From { get; set; } = "";

    public string To { get; set; } = "";
}

public sealed class KeepOutRow
{
    public string X { get; set; } = "";

    public string Y { get; set; } = "";

    public string Width { get; set; } = "";

    public string Depth { get; set; } = "";
}

public sealed class BoardForm : GearForm<Board>
{
    public string Width { get; set; } = "";

    public string Depth { get; set; } = "";

    public int? Mass { get; set; }

    public int? MaxLoad { get; set; }

    public string ClearanceUnder { get; set; } = "";

    public string ClearanceOver { get; set; } = "";

    public List<RailRow> Rails { get; set; } = [];

    public List<KeepOutRow> KeepOuts { get; set; } = [];

    public string OverhangFront { get; set; } = "0";

    public string OverhangRear { get; set; } = "40 mm";

    public string OverhangLeft { get; set; } = "40 mm";

    public string OverhangRight { get; set; } = "40 mm";

    protected override string PlaceInDocument => "board";

    protected override void Show(Board board)
    {
        Name = board.Name;
        (Width, Depth) = (Length(board.Width), Length(board.Depth));
        Mass = board.Mass.Value;
        MaxLoad = board.MaxLoad?.Value;
        ClearanceUnder = board.ClearanceUnder is { } under ? Length(under) : "";
        ClearanceOver = board.ClearanceOver is { } over ? Length(over) : "";
        Rails = [.. board.Rails.Select(rail => new RailRow { From = Length(rail.From), To = Length(rail.To) })];
        KeepOuts = [.. board.KeepOuts.Select(k => new KeepOutRow { X = Length(k.X), Y = Length(k.Y), Width = Length(k.Width), Depth = Length(k.Depth) })];
        (OverhangFront, OverhangRear) = (Length(board.Overhang.Front), Length(board.Overhang.Rear));
        (OverhangLeft, OverhangRight) = (Length(board.Overhang.Left), Length(board.Overhang.Right));
    }

    protected override Board Read(EntryReader read) => new(
        Unnamed,
        read.Name("name", "Name", Name),
        read.Length("width", "Width", Width),
        read.Length("depth", "Depth", Depth),
        Grams.From(read.Whole("mass", "Mass", Mass)),
        Rails.Select((rail, i) => new Rail(read.Length($"rails/{i}/from", "From", rail.From), read.Length($"rails/{i}/to", "To", rail.To))).ToValueList(),
        KeepOuts.Select((keepOut, i) => ReadKeepOut(keepOut, $"keepOut/{i}", read)).ToValueList(),
        new Overhang(
            read.Length("overhang/front", "Front", OverhangFront),
            read.Length("overhang/rear", "Rear", OverhangRear),
            read.Length("overhang/left", "Left", OverhangLeft),
            read.Length("overhang/right", "Right", OverhangRight)),
        MaxLoad is { } load ? Grams.From(load) : null,
        read.OptionalLength("clearance/under", "Free height below", ClearanceUnder),
        read.OptionalLength("clearance/over", "Free height up to the lid", ClearanceOver));

    protected override IEnumerable<Complaint> Complaints(Board board) => ThingCheck.Of(board);

    private static Rect ReadKeepOut(KeepOutRow row, string field, EntryReader read) => new(
        read.Length($"{field}/x", "From the left", row.X),
        read.Length($"{field}/y", "From the front", row.Y),
        read.Length($"{field}/width", "Width", row.Width),
        read.Length($"{field}/depth", "Depth", row.Depth));
}
