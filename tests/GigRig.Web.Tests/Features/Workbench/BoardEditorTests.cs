using GigRig.Domain.Rigs;
using GigRig.Domain.Gear;
using GigRig.Domain.Rules;
using GigRig.Domain.Geometry;
using GigRig.Domain.Units;
using GigRig.TestKit.Building;
using GigRig.Web.Features.Workbench;
using Xunit;
using static GigRig.Web.Tests.Features.Workbench.Benches;

namespace GigRig.Web.Tests.Features.Workbench;

public sealed class BoardEditorTests
{
    [Fact]
    public void A_move_says_where_to_and_what_it_breaks_by_how_much()
    {
        var editor = Editor();

        editor.MoveTo(Echo, new(52.Mm, 0.Mm));

        Assert.Equal((52, 0), editor.At(Echo));
        Assert.Equal("echo moved to 52, 0 mm. The body of tuner and the body of echo overlap by 3 mm; move one of them.", editor.Said);
        Assert.Equal([RuleIds.ThingsApart], editor.FaultsOf(Echo).Select(fault => fault.RuleId));
    }

    [Fact]
    public void It_says_what_would_be_wrong_somewhere_and_moves_nothing()
    {
        var editor = Editor();

        var faults = editor.FaultsAt(Echo, new(52.Mm, 0.Mm));

        Assert.Equal([RuleIds.ThingsApart], faults.Select(fault => fault.RuleId));
        Assert.Empty(editor.FaultsAt(Echo, new(55.Mm, 0.Mm)));
        Assert.Empty(editor.FaultsAt(Hall, new(52.Mm, 0.Mm)));
        Assert.Equal((100, 0), editor.At(Echo));
        Assert.False(editor.CanUndo);
    }

    [Fact]
    public void It_says_when_nothing_is_broken_any_more()
    {
        var editor = Editor();
        editor.MoveTo(Echo, new(52.Mm, 0.Mm));
        editor.MoveTo(Echo, new(55.Mm, 0.Mm));

        Assert.Equal("echo moved to 55, 0 mm. No rule is broken any more.", editor.Said);
        Assert.Empty(editor.Violations);
    }

    [Fact]
    public void Places_are_said_in_the_owners_unit()
    {
        var editor = Editor();
        editor.Unit = LengthUnit.Inches;

        editor.MoveTo(Echo, new(254.Mm, 0.Mm));

        Assert.Equal("echo moved to 10, 0 in.", editor.Said);

        // 52 mm and 3 mm at 25.4 mm an inch.
        editor.MoveTo(Echo, new(52.Mm, 0.Mm));

        Assert.Equal("echo moved to 2.05, 0 in. The body of tuner and the body of echo overlap by 0.12 in; move one of them.", editor.Said);
    }

    [Fact]
    public void A_place_beyond_any_picture_is_refused_with_the_limit()
    {
        var editor = Editor();

        editor.MoveTo(Echo, new(3001.Mm, 0.Mm));

        Assert.Equal((100, 0), editor.At(Echo));
        Assert.Equal("echo cannot stand at 3001, 0 mm. Stay within 3000 mm of the board's corner.", editor.Said);
    }

    [Fact]
    public void Turning_goes_through_the_ways_it_may_stand_about_its_middle()
    {
        var editor = Editor();

        editor.Turn(Echo);
        Assert.Equal(((75, 25), Turn.Quarter), (editor.At(Echo), editor.Edit.PlacementOf(Echo)!.Turn));
        editor.Turn(Echo);
        Assert.Equal(((100, 0), Turn.None), (editor.At(Echo), editor.Edit.PlacementOf(Echo)!.Turn));
    }

    [Fact]
    public void A_thing_that_may_stand_one_way_only_says_so()
    {
        var editor = Editor();

        editor.Turn(Tuner);

        Assert.Contains("may stand this way only", editor.Said);
        Assert.False(editor.CanUndo);
    }

    [Fact]
    public void Two_things_swap_their_fronts_and_middles()
    {
        var editor = Editor();
        editor.MoveTo(Tuner, new(10.Mm, 20.Mm));

        editor.Swap(Tuner, Echo);

        Assert.Equal(((112, 0), (-2, 20)), (editor.At(Tuner), editor.At(Echo)));
        editor.Swap(Tuner, Echo);
        Assert.Equal(((10, 20), (100, 0)), (editor.At(Tuner), editor.At(Echo)));
    }

    [Fact]
    public void A_locked_thing_stays_and_says_why()
    {
        var editor = Editor();
        editor.ToggleLock(Tuner);

        editor.MoveTo(Tuner, new(200.Mm, 0.Mm));
        Assert.Equal("tuner is locked. Unlock it first.", editor.Said);
        editor.Remove(Tuner);
        editor.Swap(Echo, Tuner);
        editor.Replace(Tuner, Fuzz);

        Assert.Equal(((10, 0), (100, 0)), (editor.At(Tuner), editor.At(Echo)));
        editor.ToggleLock(Tuner);
        editor.MoveTo(Tuner, new(200.Mm, 0.Mm));
        Assert.Equal((200, 0), editor.At(Tuner));
    }

    [Fact]
    public void What_is_added_stands_at_the_first_free_place_with_power_and_in_the_chain()
    {
        var editor = Editor();

        editor.Add(Fuzz);

        Assert.Equal((170, 0), editor.At(Fuzz));
        Assert.Equal("3", editor.OutletOf(Fuzz));
        Assert.Equal([Tuner, Fuzz, Echo], editor.Rig.Chain.Front);
        Assert.Empty(editor.Violations);
        Assert.DoesNotContain(editor.Shelf, device => device.Id == Fuzz);
    }

    [Fact]
    public void Where_there_is_no_free_place_it_stands_in_the_middle_and_is_marked()
    {
        var editor = Editor((Draft with { Board = A.Board(170, 140) }).Problem());

        editor.Add(Hall);

        Assert.Equal((37, 10), editor.At(Hall));
        Assert.StartsWith("There is no free place for hall, so it stands in the middle. ", editor.Said, StringComparison.Ordinal);
        Assert.Contains(editor.FaultsOf(Hall), fault => fault.RuleId == RuleIds.ThingsApart);
    }

    [Fact]
    public void What_is_removed_leaves_board_chain_and_outlet()
    {
        var editor = Editor();

        editor.Remove(Echo);

        Assert.Null(editor.Edit.PlacementOf(Echo));
        Assert.Equal([Tuner], editor.Rig.Chain.Front);
        Assert.Null(editor.OutletOf(Echo));
        Assert.Contains(editor.Shelf, device => device.Id == Echo);
    }

    [Fact]
    public void What_was_laid_aside_can_be_put_back_where_it_stood()
    {
        var editor = Editor();

        editor.LayAside(Echo);
        Assert.DoesNotContain(editor.Shelf, device => device.Id == Echo);
        editor.PutBack(Echo);

        Assert.Equal((100, 0), editor.At(Echo));
        Assert.Equal(Laid, editor.Rig);
        Assert.Empty(editor.Edit.Aside);
    }

    [Fact]
    public void Another_device_takes_the_place_of_one()
    {
        var editor = Editor();

        editor.Replace(Echo, Hall);

        Assert.Equal((88, 0), editor.At(Hall));
        Assert.Equal([Tuner, Hall], editor.Rig.Chain.Front);
        Assert.Equal("2", editor.OutletOf(Hall));
        Assert.Equal("hall in the place of echo.", editor.Said);
    }

    [Fact]
    public void An_off_board_thing_comes_along_and_stays_home()
    {
        var editor = Editor();

        editor.Bring(new("clip"));
        Assert.Equal([new("clip")], editor.Rig.OffBoard);
        editor.LeaveHome(new("clip"));
        Assert.Empty(editor.Rig.OffBoard);
    }

    [Fact]
    public void A_supply_among_the_devices_moves_turns_and_locks_but_stays()
    {
        var supply = A.Supply(A.Outlet("1"), A.Outlet("2")).Mounted(SupplyMount.Top, 80, 40, 40);
        var editor = Editor(Draft.FedBy(supply).Problem(), Laid.PlacingSupply(300, 0));

        editor.MoveTo(supply.Id, new(310.Mm, 10.Mm));
        editor.Turn(supply.Id);
        editor.Remove(supply.Id);
        editor.LayAside(supply.Id);

        Assert.Equal(new Placement(supply.Id, new(330.Mm, -10.Mm), Turn.Quarter), editor.Rig.Supply);
    }

    [Fact]
    public void A_thing_that_does_not_stand_is_left_alone()
    {
        var editor = Editor();

        editor.MoveTo(Hall, default);
        editor.Turn(Hall);
        editor.Remove(new("ghost"));
        editor.Add(new("ghost"));
        editor.ToggleLock(new("ghost"));

        Assert.Equal(BoardEdit.Of(Laid), editor.Edit);
        Assert.False(editor.CanUndo);
    }

    [Fact]
    public void Undo_and_redo_say_what_they_do()
    {
        var editor = Editor();
        editor.MoveTo(Echo, new(200.Mm, 0.Mm));

        editor.Undo();
        Assert.Equal(("Undone: echo moved to 200, 0 mm.", (100, 0)), (editor.Said, editor.At(Echo)));
        editor.Redo();
        Assert.Equal(("Done again: echo moved to 200, 0 mm.", (200, 0)), (editor.Said, editor.At(Echo)));
    }
}
