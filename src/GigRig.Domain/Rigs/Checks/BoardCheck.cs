using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;

namespace GigRig.Domain.Rigs.Checks;

internal static class BoardCheck
{
    public static void Run(Board board, Spot spot)
    {
        spot.Text("name", board.Name, Bounds.LongestName);
        spot.Length("width", board.Width, Bounds.LeastSize, Bounds.MostSize);
        spot.Length("depth", board.Depth, Bounds.LeastSize, Bounds.MostSize);
        spot.Mass("mass", board.Mass);
        RailsCheck.Run(board, spot);
        CheckKeepOuts(board, spot);
        CheckOverhang(board.Overhang, spot.Member("overhang", "the overhang"));
        if (board.MaxLoad is { } load)
            spot.Mass("maxLoad", load, what: "The load limit of the board");
        var clearance = spot.Member("clearance", "the clearance");
        if (board.ClearanceUnder is { } under)
            clearance.Length("under", under, 0, Bounds.MostSize, "The clearance under the board");
        if (board.ClearanceOver is { } over)
            clearance.Length("over", over, 0, Bounds.MostSize, "The clearance over the board");
    }

    private static void CheckOverhang(Overhang overhang, Spot spot)
    {
        spot.Length("front", overhang.Front, 0, Bounds.MostOverhang, "The overhang at the front");
        spot.Length("rear", overhang.Rear, 0, Bounds.MostOverhang, "The overhang at the rear");
        spot.Length("left", overhang.Left, 0, Bounds.MostOverhang, "The overhang at the left");
        spot.Length("right", overhang.Right, 0, Bounds.MostOverhang, "The overhang at the right");
    }

    private static void CheckKeepOuts(Board board, Spot spot)
    {
        spot.Count("keepOut", board.KeepOuts.Count, Bounds.MostKeepOuts, "keep-outs");
        foreach (var (index, area) in board.KeepOuts.Index())
        {
            var keepOut = spot.Item("keepOut", index, $"keep-out {index + 1}");
            keepOut.Length("width", area.Width, Bounds.LeastSize, Bounds.MostSize);
            keepOut.Length("depth", area.Depth, Bounds.LeastSize, Bounds.MostSize);
            if (!LiesOn(area, board))
                keepOut.Say(
                    "",
                    $"{area.Width} by {area.Depth} at {area.X}, {area.Y}",
                    $"on {board.Width} by {board.Depth}",
                    $"Keep-out {index + 1}, {area.Width} by {area.Depth} at {area.X}, {area.Y}, does not lie on the {board.Width} by {board.Depth} board; move it or make it smaller.");
        }
    }

    /// <summary>In wide numbers, as nothing is known to be small yet.</summary>
    private static bool LiesOn(Rect area, Board board) =>
        area.X.Value >= 0 && area.Y.Value >= 0
        && (long)area.X.Value + area.Width.Value <= board.Width.Value
        && (long)area.Y.Value + area.Depth.Value <= board.Depth.Value;
}
