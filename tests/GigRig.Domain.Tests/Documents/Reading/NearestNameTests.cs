using GigRig.Domain.Documents;
using GigRig.Domain.Rigs;

namespace GigRig.Domain.Tests.Documents.Reading;

/// <summary>Seen through the advice of the reader.</summary>
public sealed class NearestNameTests
{
    [Theory]
    [InlineData("widht", "width")]
    [InlineData("WIDTH", "width")]
    [InlineData("keepout", "keepOut")]
    [InlineData("keepOuts", "keepOut")]
    [InlineData("overhnag", "overhang")]
    [InlineData("clearence", "clearance")]
    [InlineData("maxload", "maxLoad")]
    public void A_slip_of_the_finger_finds_the_name_meant(string typed, string meant) =>
        Assert.EndsWith($"Did you mean \"{meant}\"?", AdviceOn(typed));

    [Theory]
    [InlineData("zzz")]
    [InlineData("height of the lid above the floor, measured in the middle of the board")]
    public void Something_else_is_not_guessed_at(string typed) => Assert.EndsWith("Remove it.", AdviceOn(typed));

    private static string AdviceOn(string member)
    {
        var json = $$$"""{"format":"rig-problem/1","board":{"width":400,"depth":200,"{{{member}}}":1},"event":{}}""";
        return Assert.Single(Assert.IsType<ProblemCheck.Refused>(RigProblemJson.Read(json)).Complaints).Message;
    }
}
