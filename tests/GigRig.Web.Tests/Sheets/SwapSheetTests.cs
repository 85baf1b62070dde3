using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.TestKit.Building;
using GigRig.Web.Sheets;
using Xunit;

namespace GigRig.Web.Tests.Sheets;

public sealed class SwapSheetTests
{
    private static readonly RigProblem Problem = A.Draft()
        .With(A.Device("echo").Drawing(30), A.Device("fuzz").Drawing(5), A.Device("hall").Drawing(60))
        .With(A.OffBoard("clip"))
        .FedBy(A.Outlet("1"), A.Outlet("2"))
        .Through(A.Amp())
        .Problem();

    private static readonly Rig First = A.Rig().Placing("echo", 0, 0).Placing("fuzz", 100, 0).Bringing("clip").Feeding("echo", "1").OnBattery("fuzz").Chained("fuzz echo");

    private static readonly Rig Second = A.Rig().Placing("echo", 254, 0).Placing("hall", 0, 10).Feeding("echo", "2").Feeding("hall", "1").Chained("", "hall echo");

    [Fact]
    public void It_says_in_words_what_to_take_off_put_on_move_feed_and_plug()
    {
        var sheet = SwapSheet.Of(Problem, First, Problem, Second, LengthUnit.Millimetres);

        Assert.Equal([new("fuzz", ""), new("clip", "")], sheet.Off);
        Assert.Equal([new("hall", "at 0 mm from the left, 10 mm from the front; fed from outlet 1 at 9 V; in the loop, first")], sheet.On);
        Assert.Equal([new("echo", "from 0 mm from the left, 0 mm from the front to 254 mm from the left, 0 mm from the front")], sheet.Move);
        Assert.Equal([new("echo", "from outlet 1 at 9 V to outlet 2 at 9 V")], sheet.Feed);
        Assert.Equal([new("echo", "into the loop, after hall")], sheet.Plug);
    }

    [Fact]
    public void Places_are_in_the_readers_unit() =>
        Assert.Contains("10 in from the left", SwapSheet.Of(Problem, First, Problem, Second, LengthUnit.Inches).Move[0].What);

    [Fact]
    public void Between_a_rig_and_itself_there_is_nothing_to_do() => Assert.True(SwapSheet.Of(Problem, First, Problem, First, LengthUnit.Millimetres).IsEmpty);
}
