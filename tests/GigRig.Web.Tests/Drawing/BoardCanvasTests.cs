using Blazor.Diagrams.Core.Geometry;
using Bunit;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.TestKit.Building;
using GigRig.Web.Drawing;
using Microsoft.AspNetCore.Components.Web;
using MudBlazor.Services;
using Xunit;

namespace GigRig.Web.Tests.Drawing;

public sealed class BoardCanvasTests : BunitContext, IAsyncLifetime
{
    private static readonly RigProblem Problem = A.Draft(A.Board(400, 200)).With(A.Device("tuner"), A.Device("echo")).Problem();

    private static readonly BoardScene Scene = BoardSceneMapper.Map(Problem, A.Rig().Placing("tuner", 0, 0).Placing("echo", 200, 50));

    private GearId? selected;

    public ValueTask InitializeAsync()
    {
        JSInterop.Mode = JSRuntimeMode.Loose;
        JSInterop.Setup<Rectangle>("ZBlazorDiagrams.getBoundingClientRect", _ => true).SetResult(new(0, 0, 900, 450));
        Services.AddMudServices();
        SetRendererInfo(new("Server", isInteractive: true));
        return ValueTask.CompletedTask;
    }

    [Fact]
    public void It_shows_the_bodies_of_the_scene_where_the_scene_has_them_at_its_size()
    {
        var canvas = Shown();

        Assert.Equal(["left: 0px; top: 100px", "left: 200px; top: 50px"], canvas.FindAll(".diagram-node").Select(node => Place(node.GetAttribute("style")!)).Order());
        Assert.All(canvas.FindAll(".scene-node"), node => Assert.Equal(("100", "100"), (node.GetAttribute("width"), node.GetAttribute("height"))));
        Assert.NotNull(canvas.Find(".diagram-svg-layer .scene-surface"));
    }

    [Fact]
    public void The_whole_extent_is_fitted_into_the_view()
    {
        var zoom = Math.Min(900 / Scene.Extent.Width, 450 / Scene.Extent.Height);

        Assert.Equal(zoom, Zoom(Shown()), 2);
    }

    [Fact]
    public async Task Buttons_zoom_in_and_out_and_back_to_the_whole()
    {
        var canvas = Shown();
        var whole = Zoom(canvas);

        await canvas.Find("button[aria-label='Zoom in']").ClickAsync();
        Assert.Equal(whole * 1.25, Zoom(canvas), 2);
        await canvas.Find("button[aria-label='Zoom out']").ClickAsync();
        await canvas.Find("button[aria-label='Zoom out']").ClickAsync();
        Assert.Equal(whole / 1.25, Zoom(canvas), 2);
        await canvas.Find("button[aria-label='Show the whole board']").ClickAsync();
        Assert.Equal(whole, Zoom(canvas), 2);
    }

    [Fact]
    public async Task Pressing_a_body_selects_it_and_pressing_the_ground_lets_go()
    {
        var canvas = Shown();

        await Body(canvas, "echo").PointerDownAsync(new PointerEventArgs());
        Assert.Equal(new GearId("echo"), selected);
        Assert.Contains("selected", Body(canvas, "echo").ClassList);

        await canvas.Find(".diagram-canvas").PointerDownAsync(new PointerEventArgs());
        Assert.Null(selected);
    }

    [Fact]
    public async Task Neither_dragging_nor_the_delete_key_changes_anything()
    {
        var canvas = Shown();
        var before = canvas.FindAll(".diagram-node").Select(node => node.GetAttribute("style")).ToList();

        await Body(canvas, "echo").PointerDownAsync(new PointerEventArgs { ClientX = 250, ClientY = 100 });
        await canvas.Find(".diagram-canvas").PointerMoveAsync(new PointerEventArgs { ClientX = 400, ClientY = 300 });
        await canvas.Find(".diagram-canvas").PointerUpAsync(new PointerEventArgs { ClientX = 400, ClientY = 300 });
        await canvas.Find(".diagram-canvas").KeyDownAsync(new KeyboardEventArgs { Code = "Delete", Key = "Delete" });

        Assert.Equal(before, canvas.FindAll(".diagram-node").Select(node => node.GetAttribute("style")));
    }

    [Fact]
    public void Another_scene_takes_the_place_of_the_first()
    {
        var canvas = Shown();

        canvas.Render(p => p.Add(c => c.Scene, BoardSceneMapper.Map(Problem, A.Rig().Placing("echo", 100, 0))));

        canvas.WaitForAssertion(() => Assert.Equal("left: 100px; top: 100px", Place(canvas.Find(".diagram-node").GetAttribute("style")!)));
    }

    [Fact]
    public void Before_the_page_is_alive_there_is_no_canvas_but_the_words_are_there()
    {
        SetRendererInfo(new("Static", isInteractive: false));

        var canvas = Shown();

        Assert.Empty(canvas.FindAll(".diagram-canvas"));
        Assert.Contains("tuner", canvas.Find(".scene-words").TextContent);
    }

    ValueTask IAsyncDisposable.DisposeAsync() => DisposeAsync();

    private static string Place(string style) =>
        string.Join("; ", style.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Where(part => part.StartsWith("left", StringComparison.Ordinal) || part.StartsWith("top", StringComparison.Ordinal)).Order());

    private static double Zoom(IRenderedComponent<BoardCanvas> canvas)
    {
        var style = canvas.Find(".scene-canvas-view").GetAttribute("style")!;
        return double.Parse(style[(style.LastIndexOf(' ') + 1)..].TrimEnd(';'), System.Globalization.CultureInfo.InvariantCulture);
    }

    private static AngleSharp.Dom.IElement Body(IRenderedComponent<BoardCanvas> canvas, string name) =>
        canvas.FindAll(".diagram-node").Single(node => node.TextContent.Contains(name, StringComparison.Ordinal));

    private IRenderedComponent<BoardCanvas> Shown() => Render<BoardCanvas>(p => p
        .Add(c => c.Scene, Scene)
        .Add(c => c.SelectedChanged, id => selected = id));
}
