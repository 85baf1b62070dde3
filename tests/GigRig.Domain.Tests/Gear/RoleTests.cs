using GigRig.Domain.Gear;

namespace GigRig.Domain.Tests.Gear;

public sealed class RoleTests
{
    [Theory]
    [InlineData("drive.high", "drive", true)]
    [InlineData("drive", "drive", true)]
    [InlineData("drive", "drive.high", false)]
    [InlineData("driver", "drive", false)]
    [InlineData("drive.high.hot", "drive", true)]
    public void A_narrower_role_meets_a_wider_need_only(string has, string need, bool meets) =>
        Assert.Equal(meets, new Role(has).Meets(new(need)));

    [Theory]
    [InlineData("drive", true)]
    [InlineData("lo-fi.8bit", true)]
    [InlineData("", false)]
    [InlineData(null, false)]
    [InlineData("Drive", false)]
    [InlineData("drive.", false)]
    [InlineData(".drive", false)]
    [InlineData("a..b", false)]
    [InlineData("a b", false)]
    [InlineData("hall/plate", false)]
    public void Keys_are_lower_case_letters_digits_dashes_and_single_dots(string? key, bool wellFormed) =>
        Assert.Equal(wellFormed, Role.IsWellFormed(key));

    [Fact]
    public void Sixty_characters_are_allowed_and_no_more()
    {
        Assert.True(Role.IsWellFormed(new('a', 60)));
        Assert.False(Role.IsWellFormed(new('a', 61)));
    }

    [Fact]
    public void The_wider_role_drops_the_last_part()
    {
        Assert.Equal(new Role("a.b"), new Role("a.b.c").Wider);
        Assert.Null(new Role("a").Wider);
    }
}
