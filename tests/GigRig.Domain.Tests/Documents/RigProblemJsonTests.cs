using System.Text;
using CsCheck;
using GigRig.Domain.Documents;
using GigRig.Domain.Events;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.TestKit.Generating;

namespace GigRig.Domain.Tests.Documents;

public sealed class RigProblemJsonTests
{
    [Fact]
    public void What_is_written_reads_back_as_the_same_question() =>
        GenProblem.Small.Sample(problem => Accepted(RigProblemJson.Read(RigProblemJson.Write(problem))).Draft == problem.Draft);

    [Fact]
    public void The_published_example_reads_as_it_says()
    {
        var draft = Accepted(RigProblemJson.Read(Example())).Draft;

        var echo = draft.Devices[0];
        Assert.Equal(new GearId("echo"), echo.Id);
        Assert.Equal(new BodySize(70.Mm, 120.Mm, 55.Mm), echo.Size);
        Assert.Equal([Turn.None, Turn.Half], echo.Turns);
        Assert.Equal(new PowerNeed(9.V, 12500.MilliV, 60.MilliA), echo.Power);
        Assert.Equal(new Jack(JackUse.In, Side.Right, 60.Mm), echo.Jacks[0]);
        Assert.Equal((Bypass.Buffered, new Point(35.Mm, 20.Mm)), (echo.Bypass, echo.Switches[0]));
        Assert.Equal(new RoleFunction(new("reverb"), 3, "engine"), echo.Functions[1]);
        Assert.Equal(new PowerNeed(9.V, 9.V, 5.MilliA, CurrentType.Dc, Polarity.Positive, Battery: true), draft.Devices[1].Power);
        Assert.Equal(new Outlet("2", [9.V, 12.V], 200.MilliA), draft.Supply!.Outlets[1]);
        Assert.Equal("shared", draft.Supply.Outlets[3].Group);
        Assert.Equal(new PowerAdapters(Reverse: 1, Splitter: 1), draft.Adapters);
        Assert.Equal((AmpLoop.Series, true), (draft.Amp!.Loop, draft.Amp.Footswitch));
        Assert.Equal(new Need(new("delay"), NeedLevel.Want, 20), draft.Event.Needs[2]);
        Assert.Equal(new Sound("Solo", [new("drive"), new("delay")], NeedLevel.Want, 5), draft.Event.Sounds[0]);
        Assert.Equal(new EventLimits(20_000.G, 4, 10), draft.Event.Limits);
        Assert.Equal(new PlanOptions { Pin = [new("fuzz")], TimeLimit = TimeSpan.FromSeconds(5), Headroom = 0.2m, Alternatives = 1 }, draft.Options);
    }

    [Fact]
    public void What_is_left_out_takes_the_defaults_of_the_format()
    {
        var draft = Accepted(RigProblemJson.Read("""
            {"format":"rig-problem/1","board":{"width":400,"depth":200},"devices":[{"id":"box","width":70,"depth":120}],
             "event":{"needs":[{"role":"delay"}]}}
            """)).Draft;

        Assert.Equal(Overhang.Usual, draft.Board.Overhang);
        Assert.Equal((null, null, null), (draft.Board.MaxLoad, draft.Board.ClearanceUnder, draft.Board.ClearanceOver));
        Assert.Equal((null, null, PowerAdapters.None), (draft.Supply, draft.Amp, draft.Adapters));
        Assert.Equal(PlanOptions.Default, draft.Options);
        Assert.Equal(new Need(new("delay"), NeedLevel.Must, 10), draft.Event.Needs[0]);
        var box = draft.Devices[0];
        Assert.Equal(("box", null, Bypass.True), (box.Name, box.Power, box.Bypass));
        Assert.Equal([Turn.None], box.Turns);
        Assert.Empty(box.Jacks);
    }

    [Fact]
    public void An_optional_member_may_be_null() =>
        Assert.Null(Accepted(RigProblemJson.Read("""{"format":"rig-problem/1","board":{"width":400,"depth":200},"supply":null,"event":{}}""")).Supply);

    [Fact]
    public void A_stream_reads_like_a_text_with_or_without_a_byte_order_mark()
    {
        using var plain = new MemoryStream(Encoding.UTF8.GetBytes(Example()));
        using var marked = new MemoryStream([.. Encoding.UTF8.Preamble, .. Encoding.UTF8.GetBytes(Example())]);
        Assert.Equal(Accepted(RigProblemJson.Read(Example())).Draft, Accepted(RigProblemJson.Read(plain)).Draft);
        Assert.Equal(Accepted(RigProblemJson.Read(Example())).Draft, Accepted(RigProblemJson.Read(marked)).Draft);
    }

    internal static string Example() => File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "instances", "documents", "small-night.json"));

    private static RigProblem Accepted(ProblemCheck check) => Assert.IsType<ProblemCheck.Accepted>(check).Problem;
}
