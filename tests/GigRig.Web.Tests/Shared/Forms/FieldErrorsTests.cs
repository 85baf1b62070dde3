using GigRig.Web.Shared.Forms;
using Xunit;

namespace GigRig.Web.Tests.Shared.Forms;

public sealed class FieldErrorsTests
{
    private readonly FieldErrors errors = new();

    public FieldErrorsTests() => errors.Set([new("name", "Empty."), new("width", "Too wide."), new("width", "And odd.")]);

    [Fact]
    public void A_field_nobody_touched_stays_calm() => Assert.Null(errors.At("name"));

    [Fact]
    public void A_touched_field_says_what_is_wrong()
    {
        errors.Touch("width");

        Assert.Equal("Too wide.", errors.At("width"));
        Assert.Equal(["width"], errors.Shown.Select(error => error.Field));
    }

    [Fact]
    public void After_trying_to_save_every_field_does()
    {
        errors.ShowAll();

        Assert.Equal(["name", "width"], errors.Shown.Select(error => error.Field));
    }

    [Fact]
    public void A_mended_field_is_calm_again()
    {
        errors.ShowAll();
        errors.Set([]);

        Assert.True(errors.None);
        Assert.Null(errors.At("name"));
    }
}
