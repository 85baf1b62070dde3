using Bunit;
using Bunit.TestDoubles;
using GigRig.Domain.Events;
using GigRig.Domain.Units;
using GigRig.TestKit.Building;
using GigRig.Web.Features.Plan;
using GigRig.Web.Shared;
using GigRig.Web.Tests.Hosting;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;
using Xunit;

namespace GigRig.Web.Tests.Features.Plan;

public sealed class PlanPageTests : PageTest
{
    [Fact]
    public void An_empty_library_is_told_what_to_do_next()
    {
        var page = Render<PlanPage>();

        page.WaitForAssertion(() => Assert.Contains("Add your gear", page.Markup));
        Assert.Empty(page.FindAll("button"));
    }

    [Fact]
    public async Task One_press_brings_the_drawing_who_covers_what_and_the_outlet_of_each()
    {
        var page = await PlannedAsync();

        Assert.Equal("Proved best", page.Find("h2").TextContent);
        Assert.Contains("Pocket tuner", page.Find(".scene-legend").TextContent);
        Assert.Contains("outlet 1", page.Markup);
        Assert.Contains(page.FindAll("tr.sheet-open"), row => row.TextContent.Contains("not covered"));
    }

    [Fact]
    public async Task Banning_the_only_tuner_and_asking_again_is_proved_impossible()
    {
        var page = await PlannedAsync();

        await page.Find("button[aria-label='Ban Pocket tuner: it must stay home']").ClickAsync();
        Assert.Contains("propose again", page.Markup);
        await Button(page, "Propose again").ClickAsync();

        page.WaitForAssertion(() => Assert.Equal("Proved impossible", page.Find("h2").TextContent));
        Assert.Contains("Tuner is a must.", page.Find(".plan-conflict").TextContent);
    }

    [Fact]
    public async Task What_is_at_odds_and_what_would_help_is_said_in_the_owners_unit()
    {
        await Library.WithAsync(A.Board(460, 140) with { Name = "Small board" });
        await Library.WithAsync(A.Device("tuner").Sized(500, 101).Doing("tuner"));
        await Library.WithAsync(A.Event() with { Name = "Jam night", Needs = [new(new("tuner"))] });
        var page = Render<PlanPage>(p => p.AddCascadingValue(new UnitPreference(LengthUnit.Inches, _ => Task.CompletedTask)));
        page.WaitForAssertion(() => Button(page, "Propose a rig"));
        await Button(page, "Propose a rig").ClickAsync();

        // 460, 140 and 50 mm at 25.4 mm an inch.
        page.WaitForAssertion(() => Assert.Contains("Small board is 18.11 × 5.51 in.", page.Find(".plan-conflict").TextContent));
        Assert.Contains("Take a board 1.97 in wider than Small board.", page.Find(".plan-repairs").TextContent);
        await page.FindAll("button").First(button => button.GetAttribute("aria-label")?.StartsWith("Try it: Take a board 1.97 in wider", StringComparison.Ordinal) == true).ClickAsync();
        page.WaitForAssertion(() => Assert.Contains("As if: Take a board 1.97 in wider", page.Markup));
    }

    [Fact]
    public async Task Pins_and_bans_are_in_the_address_and_come_from_it()
    {
        var page = await PlannedAsync();
        await page.Find("button[aria-label='Ban Pocket tuner: it must stay home']").ClickAsync();
        page.WaitForAssertion(() => Assert.Contains("ban=", Address));

        var again = Render<PlanPage>();
        again.WaitForAssertion(() => Button(again, "Propose a rig"));
        await Button(again, "Propose a rig").ClickAsync();

        again.WaitForAssertion(() => Assert.Equal("Proved impossible", again.Find("h2").TextContent));
    }

    [Fact]
    public async Task Other_ways_can_be_looked_at_and_the_one_that_is_looked_at_is_saved()
    {
        await Library.WithAsync(A.Device("second").Doing("tuner") with { Name = "Second tuner" });
        Navigation.NavigateTo(GigRigUrls.Plan + "?others=1");
        var page = await PlannedAsync();
        page.WaitForAssertion(() => Assert.Equal(2, page.FindAll(".plan-ways li").Count));

        await Button(page, "Other way 1").ClickAsync();
        await page.Find("form.plan-save").SubmitAsync();

        var best = page.FindAll(".plan-ways button")[0];
        Assert.Equal("false", best.GetAttribute("aria-pressed"));
        var saved = (await Library.Rigs.FindAsync(Assert.Single(await Library.Rigs.AllAsync(Cancel)).Id, Cancel))!.Item;
        Assert.Contains($"without {saved.Problem.NameOf(saved.Problem.Devices.First(device => !saved.Rig.Holds(device.Id)).Id)}", page.Find(".plan-ways").TextContent);
    }

    [Fact]
    public async Task Saving_keeps_the_rig_and_goes_to_its_page()
    {
        var page = await PlannedAsync();

        await page.Find("form.plan-save").SubmitAsync();

        var saved = Assert.Single(await Library.Rigs.AllAsync(Cancel));
        Assert.Equal("Jam night", saved.Item.Name);
        Assert.EndsWith(GigRigUrls.Rig(saved.Id), Services.GetRequiredService<NavigationManager>().Uri, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_address_says_what_is_planned_for()
    {
        await FillAsync();
        var quiet = await Library.Events.AddAsync(A.Event() with { Name = "Quiet night", Needs = [new(new("reverb"))] }, Cancel);
        Services.GetRequiredService<BunitNavigationManager>().NavigateTo($"{GigRigUrls.Plan}?event={quiet.Id}");

        var page = Render<PlanPage>();

        page.WaitForAssertion(() => Assert.Equal("Quiet night", page.Find("input").GetAttribute("value")));
    }

    private static AngleSharp.Dom.IElement Button(IRenderedComponent<PlanPage> page, string text) =>
        page.FindAll("button").Single(button => button.TextContent.Trim() == text);

    private async Task FillAsync()
    {
        await Library.WithAsync(A.Board(460, 140) with { Name = "Small board" });
        await Library.WithAsync(A.Supply(A.Outlet("1")));
        await Library.WithAsync(A.Device("tuner").Sized(45, 101).Doing("tuner").Drawing(30) with { Name = "Pocket tuner" });
        await Library.WithAsync(A.Event() with { Name = "Jam night", Needs = [new(new("tuner")), new(new("looper"), NeedLevel.Want)] });
    }

    private async Task<IRenderedComponent<PlanPage>> PlannedAsync()
    {
        await FillAsync();
        var page = Render<PlanPage>();
        page.WaitForAssertion(() => Button(page, "Propose a rig"));
        await Button(page, "Propose a rig").ClickAsync();
        page.WaitForAssertion(() => page.Find(".plan-verdict"));
        return page;
    }
}
