using Bunit;
using GigRig.Web.Features.Start;
using GigRig.Web.Tests.Hosting;
using MudBlazor;
using Xunit;

namespace GigRig.Web.Tests.Features.Start;

public sealed class TourTests : PageTest
{
    [Fact]
    public async Task It_is_offered_on_a_first_visit_and_goes_step_by_step_to_its_end()
    {
        var dialogs = Render<MudDialogProvider>();
        var tour = Offered(seen: false);

        await Press(tour, "Show me");
        for (var step = 1; step <= 3; step++)
        {
            dialogs.WaitForAssertion(() => Assert.Contains($"Step {step} of 4", dialogs.Markup));
            await Press(dialogs, "Next");
        }

        await Press(dialogs, "Done");

        dialogs.WaitForAssertion(() => Assert.Empty(dialogs.FindAll(".mud-dialog")));
        Assert.Empty(tour.FindAll("section"));
        Assert.Equal(["gigrig-tour", "seen", false], JSInterop.VerifyInvoke("gigrigDisplay.remember").Arguments);
    }

    [Fact]
    public async Task Who_does_not_want_it_is_not_asked_again()
    {
        var tour = Offered(seen: false);

        await Press(tour, "No, thanks");

        Assert.Empty(tour.FindAll("section"));
        JSInterop.VerifyInvoke("gigrigDisplay.remember");
    }

    [Fact]
    public void Who_saw_it_is_not_offered_it() => Assert.Empty(Offered(seen: true).FindAll("section"));

    private static Task Press<TComponent>(IRenderedComponent<TComponent> where, string name)
        where TComponent : Microsoft.AspNetCore.Components.IComponent =>
        where.FindAll("button").Single(button => button.TextContent.Trim() == name).ClickAsync();

    private IRenderedComponent<Tour> Offered(bool seen)
    {
        JSInterop.Setup<bool>("gigrigDisplay.knows", "gigrig-tour").SetResult(seen);
        return Render<Tour>();
    }
}
