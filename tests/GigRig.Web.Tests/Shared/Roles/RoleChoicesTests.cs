using GigRig.Data;
using GigRig.Domain.Gear;
using GigRig.Web.Shared.Roles;
using Xunit;

namespace GigRig.Web.Tests.Shared.Roles;

public sealed class RoleChoicesTests
{
    private readonly RoleChoices choices = new([new OwnRole(new("slide"), "Slide guitar")]);

    [Theory]
    [InlineData("wah", "filter")]
    [InlineData("overdrive", "drive.low")]
    [InlineData("ECHO", "delay")]
    [InlineData("slide gui", "slide")]
    public void A_role_is_found_by_what_players_call_it(string typed, string key) =>
        Assert.Contains(new Role(key), choices.Search(typed));

    [Fact]
    public void Own_roles_have_the_title_their_owner_gave() => Assert.Equal("Slide guitar", choices.TitleOf(new("slide")));

    [Theory]
    [InlineData("Talk box", "talk-box")]
    [InlineData("  Échappée 2 ", "echappee-2")]
    [InlineData("a -- b", "a-b")]
    public void A_title_makes_a_key(string title, string key) => Assert.Equal(new Role(key), choices.KeyFor(title));

    [Theory]
    [InlineData("")]
    [InlineData("!?")]
    [InlineData("Delay")]
    [InlineData("slide GUITAR")]
    [InlineData("equaliser")]
    public void What_is_a_role_already_or_has_no_letters_makes_none(string title) => Assert.Null(choices.KeyFor(title));

    [Fact]
    public void An_invented_role_is_a_choice_from_then_on()
    {
        var role = choices.Invent("Talk box");

        Assert.Contains(role, choices.Search("talk"));
        Assert.Equal("Talk box", choices.TitleOf(role));
        Assert.Equal([new OwnRole(role, "Talk box")], choices.Invented);
    }
}
