using Blazor.Diagrams;
using Blazor.Diagrams.Components;
using Blazor.Diagrams.Core.Behaviors;
using Blazor.Diagrams.Core.Models;
using Blazor.Diagrams.Core.Models.Base;
using Blazor.Diagrams.Options;
using GigRig.Domain.Gear;
using Microsoft.AspNetCore.Components;

namespace GigRig.Web.Drawing;

/// <summary>
/// The only place that knows the diagram library. Shows a scene for reading: bodies can be selected, the view can be dragged and zoomed, and
/// nothing can be moved, linked or deleted, because the behaviours for that are never registered. The scene is the truth; this follows it.
/// </summary>
internal sealed class DiagramAdapter : IDisposable
{
    private const double ZoomStep = 1.25;
    private const double LeastZoom = 0.2;
    private const double MostZoom = 8;

    private readonly BlazorDiagram diagram;
    private BoardScene? scene;
    private (double Width, double Height) fittedTo;

    public DiagramAdapter()
    {
        var options = new BlazorDiagramOptions { AllowMultiSelection = false };
        (options.Zoom.Minimum, options.Zoom.Maximum) = (LeastZoom, MostZoom);
        diagram = new(options, registerDefaultBehaviors: false);
        diagram.RegisterBehavior(new SelectionBehavior(diagram));
        diagram.RegisterBehavior(new PanBehavior(diagram));
        diagram.RegisterComponent<BodyNode, DiagramBody>();
        diagram.SelectionChanged += OnSelectionChanged;
        diagram.ContainerChanged += FitToNewSize;
    }

    /// <summary>Raised when the reader selects a body, or nothing.</summary>
    public event Action<GearId?>? Selected;

    /// <summary>Pixels to a millimetre.</summary>
    public double Zoom => diagram.Zoom;

    /// <summary>Raised when the zoom changes, so that lines can keep their width.</summary>
    public event Action? ZoomChanged
    {
        add => diagram.ZoomChanged += value;
        remove => diagram.ZoomChanged -= value;
    }

    public void Show(BoardScene next)
    {
        var sameView = scene?.Extent == next.Extent;
        scene = next;
        diagram.Batch(() =>
        {
            diagram.Nodes.Clear();
            foreach (var body in next.Bodies)
                diagram.Nodes.Add(new BodyNode(body, next.TextSize));
            if (!sameView)
                Fit();
        });
    }

    /// <summary>Marks the body of a thing that was chosen elsewhere, such as in a list.</summary>
    public void Select(GearId? id)
    {
        if (diagram.GetSelectedModels().OfType<BodyNode>().FirstOrDefault()?.Body.Id == id)
            return;
        diagram.UnselectAll();
        if (diagram.Nodes.OfType<BodyNode>().FirstOrDefault(node => node.Body.Id == id) is { } found)
            diagram.SelectModel(found, unselectOthers: true);
    }

    public void ZoomIn() => ZoomAboutMiddle(diagram.Zoom * ZoomStep);

    public void ZoomOut() => ZoomAboutMiddle(diagram.Zoom / ZoomStep);

    /// <summary>Shows the whole extent, as large as it goes.</summary>
    public void Fit()
    {
        if (scene is null || diagram.Container is not { Width: > 0, Height: > 0 } container)
            return;
        var zoom = Math.Clamp(Math.Min(container.Width / scene.Extent.Width, container.Height / scene.Extent.Height), LeastZoom, MostZoom);
        fittedTo = (container.Width, container.Height);
        diagram.Batch(() =>
        {
            diagram.SetZoom(zoom);
            diagram.SetPan(
                ((container.Width - (scene.Extent.Width * zoom)) / 2) - (scene.Extent.X * zoom),
                ((container.Height - (scene.Extent.Height * zoom)) / 2) - (scene.Extent.Y * zoom));
        });
    }

    /// <param name="ground">What lies under the bodies, in the scene's millimetres.</param>
    public RenderFragment Canvas(RenderFragment ground) => builder =>
    {
        builder.OpenComponent<CascadingValue<BlazorDiagram>>(0);
        builder.AddComponentParameter(1, nameof(CascadingValue<>.Value), diagram);
        builder.AddComponentParameter(2, nameof(CascadingValue<>.IsFixed), true);
        builder.AddComponentParameter(3, nameof(CascadingValue<>.ChildContent), (RenderFragment)(inner =>
        {
            inner.OpenComponent<DiagramCanvas>(0);
            inner.AddComponentParameter(1, nameof(DiagramCanvas.AdditionalSvg), ground);
            inner.CloseComponent();
        }));
        builder.CloseComponent();
    };

    /// <summary>Draws the ground anew.</summary>
    public void Refresh() => diagram.Refresh();

    public void Dispose()
    {
        diagram.SelectionChanged -= OnSelectionChanged;
        diagram.ContainerChanged -= FitToNewSize;
    }

    // Zooming alone keeps the corner still; the reader looks at the middle.
    private void ZoomAboutMiddle(double wanted)
    {
        var zoom = Math.Clamp(wanted, LeastZoom, MostZoom);
        var ratio = zoom / diagram.Zoom;
        var (x, y) = ((diagram.Container?.Width ?? 0) / 2, (diagram.Container?.Height ?? 0) / 2);
        diagram.Batch(() =>
        {
            diagram.SetPan(x - ((x - diagram.Pan.X) * ratio), y - ((y - diagram.Pan.Y) * ratio));
            diagram.SetZoom(zoom);
        });
    }

    // Scrolling the page moves the container too; only another size is a reason to fit again.
    private void FitToNewSize()
    {
        if (diagram.Container is { } container && fittedTo != (container.Width, container.Height))
            Fit();
    }

    private void OnSelectionChanged(SelectableModel model) =>
        Selected?.Invoke(diagram.GetSelectedModels().OfType<BodyNode>().FirstOrDefault()?.Body.Id);
}

/// <summary>A body on the canvas. Its size is ours, so the browser is never asked to measure it.</summary>
public sealed class BodyNode : NodeModel
{
    internal BodyNode(SceneBody body, double textSize)
        : base(new Blazor.Diagrams.Core.Geometry.Point(body.Area.X, body.Area.Y))
    {
        (Body, TextSize) = (body, textSize);
        (Size, ControlledSize, Locked) = (new(body.Area.Width, body.Area.Height), true, true);
    }

    public SceneBody Body { get; }

    public double TextSize { get; }
}
