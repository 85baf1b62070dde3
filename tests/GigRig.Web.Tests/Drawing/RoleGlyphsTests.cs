using GigRig.Domain.Gear;
using GigRig.Web.Drawing;
using Xunit;

namespace GigRig.Web.Tests.Drawing;

public sealed class RoleGlyphsTests
{
    [Fact]
    public void Every_built_in_role_has_a_sign_of_its_family() =>
        Assert.All(RoleCatalogue.All, entry => Assert.NotSame(RoleGlyphs.Other, RoleGlyphs.Of(entry.Role)));

    [Fact]
    public void No_two_families_share_a_sign() =>
        Assert.Equal(RoleGlyphs.All.Count + 2, RoleGlyphs.All.Append(RoleGlyphs.Other).Append(RoleGlyphs.Supply).Select(glyph => glyph.Path).Distinct().Count());

    [Fact]
    public void A_role_of_the_owners_own_has_the_plain_sign() => Assert.Same(RoleGlyphs.Other, RoleGlyphs.Of(new Role("theremin.low")));
}
