using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Rigs.Checks;

public sealed class RailsCheckTests
{
    [Fact]
    public void Touching_rails_in_any_order_are_allowed() =>
        Complain.Nothing(A.Draft(A.Board().Railed(200, 300).Railed(0, 60).Railed(60, 200)));

    [Fact]
    public void A_rail_behind_the_board_is_refused() => Complain.AboutBoard(
        board => board.Railed(250, 301),
        "/board/rails/0", "250 mm to 301 mm", "0 to 300 mm", "Rail 1 runs from 250 mm to 301 mm; the board is 300 mm deep. Keep it within.");

    [Fact]
    public void A_rail_that_ends_where_it_begins_is_refused() => Complain.AboutBoard(
        board => board.Railed(60, 60),
        "/board/rails/0/to", "60 mm", "more than 60 mm", "Rail 1 runs from 60 mm to 60 mm; let it end behind where it begins.");

    [Fact]
    public void Rails_that_overlap_are_refused() => Complain.AboutBoard(
        board => board.Railed(50, 100).Railed(0, 60),
        "/board/rails/0/from", "50 mm", "at least 60 mm", "Rail 1 begins at 50 mm, before rail 2 ends at 60 mm; make them one, or move them apart.");
}
