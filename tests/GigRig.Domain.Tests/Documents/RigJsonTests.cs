using GigRig.Domain.Documents;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Documents;

public sealed class RigJsonTests
{
    private static readonly Rig Full = A.Rig()
        .Placing("echo", -3, 20, Turn.Half).Placing("fuzz", 100, 0).PlacingSupply(200, 0, Turn.Quarter)
        .Bringing("clip")
        .With(new Feed(new("echo"), ["1", "2"], OutletJoin.Series, 21500.MilliV, [9.V, 12500.MilliV]))
        .Feeding("hall", "3", reversed: true)
        .OnBattery("fuzz")
        .Chained("fuzz", "echo") with
    {
        Silenced = [new("some-advice", [new("fuzz"), new("echo")], "I like it so")],
    };

    [Fact]
    public void What_is_written_reads_back_as_the_same_rig()
    {
        Assert.Equal(Full, Read(RigJson.Write(Full)));
        Assert.Equal(Rig.Empty, Read(RigJson.Write(Rig.Empty)));
    }

    [Fact]
    public void A_place_out_of_reach_and_an_odd_turn_are_refused() => Assert.Equal(
        [
            new("/placements/0/x", "100001", "-100000 to 100000 mm", "echo stands at x = 100001 mm; give -100000 to 100000 mm."),
            new("/supply/turn", "45", "0, 90, 180 or 270", "supply is turned by 45°; give 0, 90, 180 or 270."),
        ],
        Refused("""
            {"format":"rig/1","placements":[{"id":"echo","x":100001,"y":0}],"supply":{"id":"supply","x":0,"y":0,"turn":45},"chain":{"front":[],"loop":[]}}
            """));

    [Fact]
    public void A_note_on_silenced_advice_has_a_longest_length()
    {
        var rig = Full with { Silenced = [new("some-advice", [], new string('x', 1000))] };
        Assert.Equal(rig, Read(RigJson.Write(rig)));
        Assert.Equal(
            new Complaint("/silenced/0/note", "1001 characters", "at most 1000 characters", "The note on some-advice has 1001 characters; give at most 1000."),
            Assert.Single(Refused(RigJson.Write(Full with { Silenced = [new("some-advice", [], new string('x', 1001))] }))));
    }

    [Fact]
    public void A_problem_is_not_a_rig() =>
        Assert.Equal("/format is \"rig-problem/1\"; only \"rig/1\" can be read.", Assert.Single(Refused("""{"format":"rig-problem/1"}""")).Message);

    [Fact]
    public void What_is_missing_is_named() =>
        Assert.Equal(["/placements", "/chain"], Refused("""{"format":"rig/1"}""").Select(complaint => complaint.Path));

    private static Rig Read(string json) => Assert.IsType<RigCheck.Accepted>(RigJson.Read(json)).Rig;

    private static ValueList<Complaint> Refused(string json) => Assert.IsType<RigCheck.Refused>(RigJson.Read(json)).Complaints;
}
