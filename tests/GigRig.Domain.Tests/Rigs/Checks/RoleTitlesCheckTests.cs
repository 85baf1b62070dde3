using GigRig.Domain.Gear;
using GigRig.TestKit.Building;
using Xunit;

namespace GigRig.Domain.Tests.Rigs.Checks;

public sealed class RoleTitlesCheckTests
{
    [Fact]
    public void A_role_goes_by_the_owners_title_else_that_of_the_catalogue_else_its_key()
    {
        var problem = Titled(new(new("bird-song"), "Bird song"), new(new("delay"), "Echo")).Problem();

        Assert.Equal(["Bird song", "Echo", "Reverb", "bell"], new[] { "bird-song", "delay", "reverb", "bell" }.Select(key => problem.TitleOf(new(key))));
    }

    [Fact]
    public void A_bad_key_is_refused() => Complain.About(
        Titled(new RoleTitle(new("Bird song"), "Bird song")),
        "/roles/0/key",
        "Bird song",
        "1 to 60 of a-z, 0-9, - and dots between parts",
        "\"Bird song\", a role of role 1, is not well formed; use lower-case letters, digits, - and dots between parts, at most 60.");

    [Fact]
    public void An_empty_title_is_refused() => Complain.About(
        Titled(new RoleTitle(new("bird-song"), "")), "/roles/0/title", "nothing", "1 to 200 characters", "The title of role 1 is empty; give 1 to 200 characters.");

    [Fact]
    public void Two_titles_for_one_role_are_refused() => Complain.About(
        Titled(new(new("bird-song"), "Bird song"), new(new("bird-song"), "Birds")), "/roles/1/key", "bird-song", "once", "bird-song has two titles; keep one.");

    private static Domain.Rigs.RigProblemDraft Titled(params RoleTitle[] roles) => Complain.Fine with { Roles = [.. roles] };
}
