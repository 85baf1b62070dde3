using GigRig.Domain.Gear;

namespace GigRig.Domain.Rigs.Checks;

internal static class RailsCheck
{
    public static void Run(Board board, Spot spot)
    {
        spot.Count("rails", board.Rails.Count, Bounds.MostRails);
        foreach (var (index, rail) in board.Rails.Index())
        {
            var place = spot.Item("rails", index, $"rail {index + 1}");
            if (rail.From.Value < 0 || rail.To > board.Depth)
                place.Say("", $"{rail.From} to {rail.To}", $"0 to {board.Depth}", $"Rail {index + 1} runs from {rail.From} to {rail.To}; the board is {board.Depth} deep. Keep it within.");
            if (rail.From >= rail.To)
                place.Say("to", $"{rail.To}", $"more than {rail.From}", $"Rail {index + 1} runs from {rail.From} to {rail.To}; let it end behind where it begins.");
        }

        CheckOverlaps(board, spot);
    }

    private static void CheckOverlaps(Board board, Spot spot)
    {
        var ordered = board.Rails.Index().OrderBy(rail => rail.Item.From).ThenBy(rail => rail.Item.To).ToList();
        foreach (var (before, after) in ordered.Zip(ordered.Skip(1)))
            if (after.Item.From < before.Item.To)
                spot.Item("rails", after.Index, "").Say(
                    "from",
                    $"{after.Item.From}",
                    $"at least {before.Item.To}",
                    $"Rail {after.Index + 1} begins at {after.Item.From}, before rail {before.Index + 1} ends at {before.Item.To}; make them one, or move them apart.");
    }
}
