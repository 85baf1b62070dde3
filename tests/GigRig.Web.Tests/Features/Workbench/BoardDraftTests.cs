using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.Web.Features.Workbench;
using Xunit;
using static GigRig.Web.Tests.Features.Workbench.Benches;

namespace GigRig.Web.Tests.Features.Workbench;

public sealed class BoardDraftTests
{
    [Fact]
    public void What_is_kept_comes_back_equal()
    {
        var edit = new BoardEdit(Laid, [Tuner], [new Placement(Hall, new(7.Mm, -3.Mm), Turn.Quarter)]);

        Assert.Equal((4, edit), BoardDraft.Read(BoardDraft.Write(4, edit)));
    }

    [Theory]
    [InlineData("")]
    [InlineData("null")]
    [InlineData("{}")]
    [InlineData("""{"Version":1,"Rig":"{}","Locked":[],"Aside":[]}""")]
    [InlineData("""{"Version":1,"Rig":null,"Locked":[],"Aside":[]}""")]
    [InlineData("""{"Version":1,"Rig":"x","Locked":[null],"Aside":[]}""")]
    public void What_is_no_draft_is_left_alone(string text) => Assert.Null(BoardDraft.Read(text));
}
