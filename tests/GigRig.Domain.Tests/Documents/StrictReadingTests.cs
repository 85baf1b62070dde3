using System.Text;
using CsCheck;
using GigRig.Domain.Documents;
using GigRig.Domain.Rigs;

namespace GigRig.Domain.Tests.Documents;

/// <summary>Every kind of complaint the reader makes about the text itself, whole.</summary>
public sealed class StrictReadingTests
{
    private const string Board = "\"board\":{\"width\":400,\"depth\":200}";

    [Theory]
    [InlineData("width\":\"wide", "/board/width", "\"wide\"", "a whole number", "/board/width is \"wide\"; give a whole number.")]
    [InlineData("width\":null,\"mass\":\"1", "/board/width", "null", "a whole number", "/board/width is null; give a whole number.")]
    public void A_wrong_kind_of_value_is_named_with_what_is_wanted(string injected, string path, string value, string limit, string message)
    {
        var complaint = Complaints($$$"""{"format":"rig-problem/1","board":{"{{{injected}}}","depth":200},"event":{}}""")[0];
        Assert.Equal(new Complaint(path, value, limit, message), complaint);
    }

    [Theory]
    [InlineData("70.5")]
    [InlineData("1e99")]
    [InlineData("3000000000")]
    [InlineData("true")]
    [InlineData("[70]")]
    [InlineData("{}")]
    public void Only_a_whole_number_is_a_length(string value) =>
        Assert.Equal("/devices/0/width", Complaint($$$"""{"format":"rig-problem/1",{{{Board}}},"devices":[{"id":"a","width":{{{value}}},"depth":1}],"event":{}}""").Path);

    [Fact]
    public void A_missing_member_is_named() => Pins(
        """{"format":"rig-problem/1","board":{"width":400},"event":{}}""",
        new("/board/depth", "nothing", "required", "/board/depth is missing. Add it."));

    [Fact]
    public void An_unknown_member_is_refused_with_the_nearest_known_name() => Pins(
        """{"format":"rig-problem/1","board":{"width":400,"depth":200,"mas":3},"event":{}}""",
        new("/board/mas", "mas", "id, name, width, depth, mass, rails, keepOut, overhang, maxLoad, clearance", "/board/mas is not a member of this document. Did you mean \"mass\"?"));

    [Fact]
    public void An_unknown_member_that_is_like_nothing_known_should_go() =>
        Assert.Equal("/colour is not a member of this document. Remove it.", Complaint($$$"""{"format":"rig-problem/1",{{{Board}}},"event":{},"colour":1}""").Message);

    [Fact]
    public void A_member_given_twice_is_refused() => Pins(
        """{"format":"rig-problem/1","board":{"width":400,"depth":200,"width":300},"event":{}}""",
        new("/board/width", "300", "one", "/board/width is given twice. Keep one."));

    [Fact]
    public void An_unknown_word_is_refused_with_the_known_ones_and_the_nearest() => Pins(
        $$$"""{"format":"rig-problem/1",{{{Board}}},"supply":{"mount":"undr","outlets":[]},"event":{}}""",
        new("/supply/mount", "\"undr\"", "\"under\" or \"top\" or \"off\"", "/supply/mount is \"undr\"; give \"under\" or \"top\" or \"off\". Did you mean \"under\"?"));

    [Fact]
    public void A_number_is_no_word() =>
        Assert.Equal("/supply/mount", Complaint($$$"""{"format":"rig-problem/1",{{{Board}}},"supply":{"mount":0,"outlets":[]},"event":{}}""").Path);

    [Fact]
    public void Volts_have_at_most_three_decimals() => Pins(
        $$$"""{"format":"rig-problem/1",{{{Board}}},"supply":{"mount":"off","outlets":[{"id":"1","volts":[9,9.0005],"current":100}]},"event":{}}""",
        new("/supply/outlets/0/volts/1", "9.0005", "volts with at most three decimals", "/supply/outlets/0/volts/1 is 9.0005; give volts with at most three decimals."));

    [Fact]
    public void Another_format_is_refused_and_nothing_else_is_said() => Pins(
        """{"format":"rig-problem/2","stage":true}""",
        new("/format", "\"rig-problem/2\"", "\"rig-problem/1\"", "/format is \"rig-problem/2\"; only \"rig-problem/1\" can be read."));

    [Fact]
    public void A_text_that_is_not_json_is_refused_with_the_place() => Pins(
        "{\n  \"format\": }",
        new("", "line 2, byte 13", "JSON of at most 32 levels", "The text is not JSON, or nests deeper than 32 levels, at line 2, byte 13."));

    [Fact]
    public void Thirty_three_levels_are_too_many() =>
        Assert.Equal("", Complaint($$$"""{"format":"rig-problem/1",{{{Board}}},"event":{},"devices":{{{new string('[', 32)}}}{{{new string(']', 32)}}}}""").Path);

    [Theory]
    [InlineData("[]", "The document is a list; give an object.")]
    [InlineData("null", "The document is null; give an object.")]
    [InlineData("7", "The document is 7; give an object.")]
    public void The_document_is_an_object(string json, string message) => Assert.Equal(message, Complaint(json).Message);

    [Fact]
    public void Slashes_and_tildes_in_names_are_escaped_as_JSON_Pointers_ask() =>
        Assert.Equal("/a~1b~0c", Complaint($$$"""{"format":"rig-problem/1",{{{Board}}},"event":{},"a/b~c":1}""").Path);

    [Fact]
    public void All_faults_are_named_at_once_those_of_the_text_and_those_of_the_question() =>
        Assert.Equal(
            ["/colour", "/board/width"],
            Complaints("""{"format":"rig-problem/1","colour":1,"board":{"width":4000,"depth":200},"event":{}}""").Select(complaint => complaint.Path));

    [Fact]
    public void Half_a_character_is_refused_as_text() =>
        Assert.Equal("/devices/0/id", Complaint($$$"""{"format":"rig-problem/1",{{{Board}}},"devices":[{"id":"\ud800","width":1,"depth":1}],"event":{}}""").Path);

    [Fact]
    public void Half_a_character_is_refused_in_a_name() =>
        Assert.NotEmpty(Complaints($$$"""{"format":"rig-problem/1",{{{Board}}},"event":{},"\ud800":1}"""));

    [Fact]
    public void Bytes_that_are_no_text_are_refused()
    {
        using var stream = new MemoryStream([.. Encoding.UTF8.GetBytes("{\"format\":\""), 0xFF, 0xFE, .. Encoding.UTF8.GetBytes("\"}")]);
        Assert.IsType<ProblemCheck.Refused>(RigProblemJson.Read(stream));
    }

    [Fact]
    public void A_flood_of_faults_is_cut_short()
    {
        var members = string.Join(",", Enumerable.Range(0, 2000).Select(i => $"\"unknown{i}\":1"));
        Assert.Equal(501, Complaints($$$"""{"format":"rig-problem/1",{{{Board}}},"event":{},{{{members}}}}""").Count);
    }

    /// <summary>The published example with one stretch of it replaced by something else.</summary>
    [Fact]
    public void No_damage_to_a_document_makes_the_reader_throw()
    {
        var example = RigProblemJsonTests.Example();
        Gen.Select(Gen.Int[0, example.Length - 1], Gen.Int[0, 30], Gen.OneOf(Gen.String, Gen.String["{}[]\",:0123456789-.eEtruefalsn \\ud"]))
            .Sample((start, length, put) => RigProblemJson.Read(example[..start] + put + example[Math.Min(example.Length, start + length)..]) is not null);
    }

    private static void Pins(string json, Complaint expected) => Assert.Equal(expected, Complaint(json));

    private static Complaint Complaint(string json) => Assert.Single(Complaints(json));

    private static ValueList<Complaint> Complaints(string json) => Assert.IsType<ProblemCheck.Refused>(RigProblemJson.Read(json)).Complaints;
}
