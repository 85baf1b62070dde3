using System.Globalization;
using System.Text.RegularExpressions;
using GigRig.Browser.Tests.Harness;
using GigRig.Data;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Wiring;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using Xunit;

namespace GigRig.Browser.Tests.Journeys;

/// <summary>Somebody who has the gear and the printed page, and nothing else. What they read there is held against the domain's own figures for the same rig.</summary>
public sealed partial class BuildFromPaperTests(Chromium chromium) : BrowserTest(chromium)
{
    /// <summary>Small print in a newspaper; no standard says how small a list may be.</summary>
    private const double LeastPoints = 7;

    /// <summary>Of all words outside the drawing, in points: 72 to the inch, where CSS has 96 pixels to it (CSS Values and Units 3, absolute lengths).</summary>
    private const string SmallestLetters = """
        () => Math.min(...[...document.querySelectorAll("main *")]
          .filter((part) => !part.closest("svg") && part.getClientRects().length && [...part.childNodes].some((node) => node.nodeType === Node.TEXT_NODE && node.data.trim()))
          .map((part) => parseFloat(getComputedStyle(part).fontSize) * 72 / 96))
        """;

    private IPage paper = null!;
    private RigProblem problem = null!;
    private Rig rig = null!;

    [Theory]
    [InlineData("Jam night")]
    [InlineData("Van tour")]
    [InlineData("Wedding function")]
    public async Task A_person_could_build_the_board_from_the_printed_page_alone(string eventType)
    {
        await Page.LookAroundAsync();
        await Page.ProposeAsync(eventType);
        await Page.GetByLabel("Name of the rig").FillAsync("Tonight");
        await Page.Button("Save rig").ClickAsync();
        await Page.Heading("Tonight").WaitForAsync();
        // All there is to tick: the most that has to go onto one sheet.
        foreach (var box in await Page.Locator(".rig-form").GetByRole(AriaRole.Checkbox).AllAsync())
            await box.CheckAsync();
        await Page.Button("Make a link").ClickAsync();
        var link = await Page.GetByLabel("Link", new() { Exact = true }).InputValueAsync();
        (problem, rig) = await App.LookIntoAsync(async library =>
        {
            var rigs = library.GetRequiredService<RigStore>();
            var saved = (await rigs.FindAsync(Assert.Single(await rigs.AllAsync()).Id))!.Item;
            return (saved.Problem, saved.Rig);
        });
        Assert.NotEmpty(rig.Placements);
        paper = await NewVisitorAsync(script: false);
        await paper.GotoAsync(link);
        // What is not printed has no inner text from here on.
        await paper.EmulateMediaAsync(new() { Media = Media.Print });

        await TheyFindTheOrderAsync();
        await TheyFindWhereEverythingStandsAsync();
        await TheyFindWhatFeedsEachAsync();
        await TheyFindALeadForEveryHopAsync();
        await TheyFindWhatToPackAsync();
        Assert.Contains("Never lift or cut the protective earth", await paper.Locator("main").InnerTextAsync(), StringComparison.Ordinal);
        Assert.NotEmpty(await RowsAsync("Notes and values"));
        Assert.InRange(await paper.EvaluateAsync<double>(SmallestLetters), LeastPoints, double.MaxValue);
        var pdf = System.Text.Encoding.Latin1.GetString(await paper.PdfAsync(new() { Format = "A4" }));
        Assert.Equal(1, pdf.Split("/Type /Page\n").Length - 1);
    }

    private async Task TheyFindTheOrderAsync()
    {
        foreach (var (heading, part) in new[] { ("In front of the amp", rig.Chain.Front), ("In the amp's loop", rig.Chain.Loop) })
        {
            var stops = await paper.Locator($"h3:text-is(\"{heading}\") + ol > li").AllInnerTextsAsync();
            // The two ends are no devices.
            Assert.Equal(part.Select(problem.NameOf), stops.Skip(1).SkipLast(1).Select(stop => Unnumbered(stop.Trim())));
        }
    }

    private async Task TheyFindWhereEverythingStandsAsync()
    {
        var read = (await RowsAsync("Front-left corner of each thing, as the player stands at the board"))
            .Select(row => (Unnumbered(row[0]), Measure(row[1]), Measure(row[2]), row[3].Length == 0 ? 0 : int.Parse(row[3][..row[3].IndexOf('°', StringComparison.Ordinal)], CultureInfo.InvariantCulture)))
            .ToHashSet();

        var standing = rig.Supply is { } supply ? rig.Placements.Append(supply) : rig.Placements;
        Assert.Equal(standing.Select(placed => (problem.NameOf(placed.Id), placed.At.X.Value, placed.At.Y.Value, (int)placed.Turn)).ToHashSet(), read);
    }

    private async Task TheyFindWhatFeedsEachAsync()
    {
        var outlets = await RowsAsync("Outlet by outlet");
        foreach (var feed in rig.HookUp.Where(feed => !feed.OnBattery))
        {
            var row = Assert.Single(outlets, row => row[2].Split('\n').Any(line => Regex.IsMatch(line, $@"^\d+ {Regex.Escape(problem.NameOf(feed.Device))} ")));
            Assert.StartsWith(string.Join(" + ", feed.Outlets) + " ", row[0] + " ", StringComparison.Ordinal);
            var volts = Volts().Matches(row[1]).Select(match => decimal.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture)).ToList();
            Assert.Contains(feed.Volts.Value / 1000m, volts);
            Assert.All(feed.Settings, setting => Assert.Contains(setting.Value / 1000m, volts));
            Assert.Equal(feed.Reversed, row[2].Contains("reversing", StringComparison.Ordinal));
        }

        Assert.Equal(rig.HookUp.Count(feed => !feed.OnBattery), outlets.Sum(row => Regex.Count(row[2], @"^\d+ ", RegexOptions.Multiline)));
        if (rig.HookUp.Any(feed => feed.OnBattery))
            Assert.Equal(rig.HookUp.Where(feed => feed.OnBattery).Select(feed => problem.NameOf(feed.Device)).ToHashSet(), (await RowsAsync("On their own batteries")).Select(row => Unnumbered(row[0])).ToHashSet());
    }

    private async Task TheyFindALeadForEveryHopAsync()
    {
        var rows = await RowsAsync("Lead by lead; letters as in the drawing");
        var plan = LeadPlan.Of(problem, rig);
        Assert.Equal(plan.Hops.Count, rows.Count);
        foreach (var (wired, row) in plan.Hops.Zip(rows))
        {
            var ends = row[1].Split(" → ");
            Assert.Equal(2, ends.Length);
            AssertEnd(wired.Hop.From, ends[0]);
            AssertEnd(wired.Hop.To, ends[1]);
            // Rounded up to a whole centimetre, or from a metre on to a tenth of one.
            if (wired.Needed.Value > 0)
                Assert.InRange(Measure(row[2]), wired.Needed.Value, wired.Needed.Value + (wired.Needed.Value < 1000 ? 9 : 99));
            if (wired.Lead is { } lead)
                Assert.StartsWith(lead.Name, row[3], StringComparison.Ordinal);
            else if (wired.IsMissing)
                Assert.InRange(Measure(Length().Match(row[3]).Value), wired.Needed.Value, int.MaxValue);
            else
                Assert.NotEmpty(row[3]);
            Assert.Equal(wired.IsMissing, row[3].StartsWith("Missing: ", StringComparison.Ordinal));
        }

        var letters = rows.Select(row => row[0]).Where(mark => mark != "long").ToList();
        Assert.Equal(plan.Hops.Count(wired => wired.Hop.Kind == HopKind.Patch), letters.Count);
        Assert.Equal(letters.Count, letters.Distinct().Count());
        var drawn = paper.GetByRole(AriaRole.Img, new() { Name = problem.Board.Name }).Filter(new() { Visible = true });
        Assert.Equal(letters, await drawn.Locator(".scene-lead-mark").AllTextContentsAsync());
    }

    private async Task TheyFindWhatToPackAsync()
    {
        var section = paper.Locator("section").Filter(new() { Has = paper.Heading("Pack") });
        var lines = (await section.GetByRole(AriaRole.Listitem).AllInnerTextsAsync()).Select(line => line.Trim()).ToList();
        var things = rig.Placements.Select(placed => placed.Id).Concat(rig.OffBoard).Append(problem.Board.Id)
            .Concat(problem.Supply is { } supply ? [supply.Id] : []).Concat(problem.Amp is { } amp ? [amp.Id] : []);
        Assert.All(things, thing => Assert.Contains(problem.NameOf(thing), lines));

        var plan = LeadPlan.Of(problem, rig);
        Assert.All(plan.Used, used => Assert.Contains(lines, line => line.StartsWith($"{used.Count} × {used.Lead.Name}, ", StringComparison.Ordinal)));
        Assert.Equal(plan.Missing.Count(), lines.Where(line => line.EndsWith("to buy or make", StringComparison.Ordinal)).Sum(CountIn));
        Assert.Equal(rig.HookUp.Count(feed => !feed.OnBattery), CountIn(Assert.Single(lines, line => line.EndsWith("× power lead", StringComparison.Ordinal))));
        Assert.Equal(rig.HookUp.Count(feed => feed.OnBattery), lines.Where(line => line.EndsWith("× fresh battery", StringComparison.Ordinal)).Sum(CountIn));
    }

    private void AssertEnd(HopEnd end, string said)
    {
        if (end.Id is { } id)
            Assert.Contains(problem.NameOf(id), said, StringComparison.Ordinal);
        else
            Assert.NotEmpty(said);
        if (end.Thing is HopThing.Device or HopThing.Amp && WordOf(end.Jack) is { } word)
            Assert.Contains($", {word}", said, StringComparison.Ordinal);
    }

    private static string? WordOf(JackUse jack) => jack switch
    {
        JackUse.In => "input",
        JackUse.Out => "output",
        JackUse.Send => "send",
        JackUse.Return => "return",
        _ => null,
    };

    /// <summary>The cells of each row below the head, as printed; hard spaces become plain ones.</summary>
    private async Task<List<string[]>> RowsAsync(string caption)
    {
        var rows = new List<string[]>();
        foreach (var row in await paper.GetByRole(AriaRole.Table, new() { Name = caption, Exact = true }).Locator("tbody tr").AllAsync())
            rows.Add([.. (await row.Locator("th, td").AllInnerTextsAsync()).Select(cell => cell.Replace('\u00a0', ' ').Trim())]);
        return rows;
    }

    private static string Unnumbered(string words) => Regex.Replace(words, @"^\d+ ", "");

    private static int CountIn(string line) => int.Parse(line[..line.IndexOf(' ', StringComparison.Ordinal)], CultureInfo.InvariantCulture);

    /// <summary>In millimetres.</summary>
    private static int Measure(string text)
    {
        var match = Length().Match(text);
        Assert.True(match.Success, $"\"{text}\" is not a length.");
        return (int)(decimal.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture) * match.Groups[2].Value switch { "mm" => 1, "cm" => 10, _ => 1000 });
    }

    [GeneratedRegex(@"([\d.]+) (mm|cm|m)\b")]
    private static partial Regex Length();

    [GeneratedRegex(@"([\d.]+) V")]
    private static partial Regex Volts();
}
