using GigRig.Web.Shared;
using Xunit;

namespace GigRig.Web.Tests.Shared;

public sealed class CopyNameTests
{
    [Fact]
    public void A_copy_gets_the_first_name_that_is_free()
    {
        string[] taken = ["Jam", "Jam (copy)", "Jam (copy 2)"];

        Assert.Equal("Jam (copy 3)", CopyName.Of("Jam", taken.Contains));
        Assert.Equal("Tower (copy)", CopyName.Of("Tower", taken.Contains));
    }

    [Fact]
    public void A_name_without_room_for_more_stays_as_it_is() => Assert.Equal(new string('x', 198), CopyName.Of(new string('x', 198), _ => false));
}
