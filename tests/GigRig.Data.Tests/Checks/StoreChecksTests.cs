using GigRig.Data.Checks;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.TestKit.Building;

namespace GigRig.Data.Tests.Checks;

public sealed class StoreChecksTests
{
    [Fact]
    public void Good_things_pass() => Assert.Empty((IEnumerable<Complaint>)
    [
        .. StoreChecks.Of(new Ownership(GearStatus.Gone, "two\nlines\tand a tab", 0)),
        .. StoreChecks.Of(new OwnRole(new("drive.fuzz-2"), "Fuzz")),
        .. StoreChecks.Of(new SavedRig("Jam", "", A.Draft().Problem(), A.Rig(), default)),
    ]);

    [Theory]
    [InlineData("", "The name is empty; give 1 to 200 characters.")]
    [InlineData("  ", "The name is empty; give 1 to 200 characters.")]
    [InlineData("a\u0007b", "The name \"a�b\" holds a control character; take it out.")]
    public void A_name_is_there_and_printable(string name, string message) =>
        Assert.Equal(message, Assert.Single(PlainChecks.Name("/name", "name", name)).Message);

    [Fact]
    public void A_name_and_a_note_have_a_longest_length()
    {
        Assert.Empty(PlainChecks.Name("/name", "name", new string('x', 200)));
        Assert.Equal("201 characters", Assert.Single(PlainChecks.Name("/name", "name", new string('x', 201))).Value);
        Assert.Empty(PlainChecks.Note("/note", new string('x', 4000)));
        Assert.Equal("at most 4000 characters", Assert.Single(PlainChecks.Note("/note", new string('x', 4001))).Limit);
        Assert.Equal("The note holds a control character; take it out.", Assert.Single(PlainChecks.Note("/note", "a\0b")).Message);
    }

    [Fact]
    public void Words_outside_the_known_ones_are_named() => Assert.Equal(
        "The status 9 is unknown; give one of: Ready, LentOut, InRepair, Gone.",
        Assert.Single(StoreChecks.Of(new Ownership((GearStatus)9))).Message);

    [Fact]
    public void A_role_key_is_well_formed() => Assert.Equal(
        new Complaint("/key", "Bird Song", "1 to 60 of a-z, 0-9, - and dots between parts", "The key \"Bird Song\" is not well formed; use lower-case letters, digits, - and dots between parts, at most 60."),
        Assert.Single(StoreChecks.Of(new OwnRole(new("Bird Song"), "Bird song"))));
}
