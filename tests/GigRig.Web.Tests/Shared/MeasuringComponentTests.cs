using Bunit;
using GigRig.Domain.Units;
using GigRig.Web.Shared;
using Microsoft.AspNetCore.Components.Rendering;
using Xunit;

namespace GigRig.Web.Tests.Shared;

public sealed class MeasuringComponentTests
{
    [Fact]
    public async Task The_owners_unit_reaches_every_part_that_measures()
    {
        await using var context = new BunitContext();

        Assert.Equal("Inches", context.Render<Part>(part => part.AddCascadingValue(new UnitPreference(LengthUnit.Inches, _ => Task.CompletedTask))).Markup);
        Assert.Equal("Millimetres", context.Render<Part>().Markup);
    }

    private sealed class Part : MeasuringComponent
    {
        protected override void BuildRenderTree(RenderTreeBuilder builder) => builder.AddContent(0, Unit);
    }
}
