using GigRig.Web.Features.Workbench;
using Xunit;

namespace GigRig.Web.Tests.Features.Workbench;

public sealed class EditHistoryTests
{
    [Fact]
    public void Undo_says_what_is_taken_back_and_redo_what_is_done_again()
    {
        var history = new EditHistory<int>(0);
        history.Do(1, "one");
        history.Do(2, "two");

        Assert.Equal(("two", 1), (history.Undo(), history.Present));
        Assert.Equal(("one", 0), (history.Undo(), history.Present));
        Assert.Equal(("one", 1), (history.Redo(), history.Present));
        Assert.Equal(("one", "two"), (history.NextUndo, history.NextRedo));
    }

    [Fact]
    public void At_either_end_nothing_happens()
    {
        var history = new EditHistory<int>(7);

        Assert.Null(history.Undo());
        Assert.Null(history.Redo());
        Assert.Equal((7, false, false), (history.Present, history.CanUndo, history.CanRedo));
    }

    [Fact]
    public void A_new_move_forgets_what_was_taken_back()
    {
        var history = new EditHistory<int>(0);
        history.Do(1, "one");
        history.Undo();
        history.Do(2, "two");

        Assert.False(history.CanRedo);
        Assert.Equal(2, history.Present);
    }
}
