using GigRig.Domain.Gear;
using GigRig.Domain.Units;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Rigs.Checks;

public sealed class BoardCheckTests
{
    [Fact]
    public void A_width_of_nothing_is_refused() => Complain.AboutBoard(
        board => board with { Width = 0.Mm },
        "/board/width", "0", "1 to 3000 mm", "The width of the board is 0 mm; give 1 to 3000 mm.");

    [Fact]
    public void A_depth_beyond_three_metres_is_refused() => Complain.AboutBoard(
        board => board with { Depth = 3001.Mm },
        "/board/depth", "3001", "1 to 3000 mm", "The depth of the board is 3001 mm; give 1 to 3000 mm.");

    [Fact]
    public void The_largest_and_the_smallest_board_are_allowed()
    {
        Complain.Nothing(A.Draft(A.Board(3000, 3000)));
        Complain.Nothing(A.Draft(A.Board(1, 1)));
    }

    [Fact]
    public void A_mass_beyond_two_hundred_kilograms_is_refused() => Complain.AboutBoard(
        board => board with { Mass = 200_001.G },
        "/board/mass", "200001", "0 to 200000 g", "The mass of the board is 200001 g; give 0 to 200000 g.");

    [Fact]
    public void A_negative_load_limit_is_refused() => Complain.AboutBoard(
        board => board with { MaxLoad = (-1).G },
        "/board/maxLoad", "-1", "0 to 200000 g", "The load limit of the board is -1 g; give 0 to 200000 g.");

    [Fact]
    public void A_clearance_below_nothing_is_refused()
    {
        Complain.AboutBoard(board => board with { ClearanceOver = (-1).Mm }, "/board/clearance/over", "-1", "0 to 3000 mm", "The clearance over the board is -1 mm; give 0 to 3000 mm.");
        Complain.AboutBoard(board => board with { ClearanceUnder = 3001.Mm }, "/board/clearance/under", "3001", "0 to 3000 mm", "The clearance under the board is 3001 mm; give 0 to 3000 mm.");
    }

    [Fact]
    public void An_overhang_beyond_half_a_metre_is_refused() => Complain.AboutBoard(
        board => board with { Overhang = Overhang.Usual with { Left = 501.Mm } },
        "/board/overhang/left", "501", "0 to 500 mm", "The overhang at the left is 501 mm; give 0 to 500 mm.");

    [Fact]
    public void A_keep_out_that_leaves_the_board_is_refused() => Complain.AboutBoard(
        board => board.KeepingOut(590, 0, 20, 20),
        "/board/keepOut/0", "20 mm by 20 mm at 590 mm, 0 mm", "on 600 mm by 300 mm",
        "Keep-out 1, 20 mm by 20 mm at 590 mm, 0 mm, does not lie on the 600 mm by 300 mm board; move it or make it smaller.");

    [Fact]
    public void A_keep_out_flush_with_the_edges_is_allowed() => Complain.Nothing(A.Draft(A.Board().KeepingOut(0, 0, 600, 300)));

    [Fact]
    public void A_keep_out_of_no_width_is_refused() => Complain.AboutBoard(
        board => board.KeepingOut(0, 0, 0, 20),
        "/board/keepOut/0/width", "0", "1 to 3000 mm", "The width of keep-out 1 is 0 mm; give 1 to 3000 mm.");

    [Fact]
    public void Forty_one_keep_outs_are_too_many() => Complain.AboutBoard(
        board => Enumerable.Repeat(0, 41).Aggregate(board, (b, _) => b.KeepingOut(0, 0, 1, 1)),
        "/board/keepOut", "41", "at most 40", "The board has 41 keep-outs; give at most 40.");
}
