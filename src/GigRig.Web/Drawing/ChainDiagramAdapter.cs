using Blazor.Diagrams;
using Blazor.Diagrams.Components;
using Blazor.Diagrams.Core.Behaviors;
using Blazor.Diagrams.Core.Geometry;
using Blazor.Diagrams.Core.Models;
using Blazor.Diagrams.Core.Models.Base;
using Blazor.Diagrams.Options;
using GigRig.Domain.Gear;
using GigRig.Domain.Wiring;
using Microsoft.AspNetCore.Components;

namespace GigRig.Web.Drawing;

/// <summary>
/// The chain on the diagram library: stops with a port at each end, in two rows, joined as they are wired. Devices can be dragged along their row and into the other;
/// where one is put down is told, and the picture that comes back is the truth. Nothing can be linked, deleted or zoomed: the behaviours for that are never registered.
/// </summary>
internal sealed class ChainDiagramAdapter : IDisposable
{
    public const int NodeWidth = 116;
    public const int NodeHeight = 52;
    private const int ColumnStep = 150;
    private const int RowStep = 96;
    private const int Margin = 14;

    private readonly BlazorDiagram diagram;
    private ChainPicture? picture;

    public ChainDiagramAdapter()
    {
        diagram = new(new BlazorDiagramOptions { AllowMultiSelection = false }, registerDefaultBehaviors: false);
        diagram.RegisterBehavior(new SelectionBehavior(diagram));
        diagram.RegisterBehavior(new DragMovablesBehavior(diagram));
        diagram.RegisterComponent<ChainNode, ChainDiagramNode>();
    }

    /// <summary>Raised when a device is put down: which, in which row, before how many of the others there.</summary>
    public event Action<GearId, ChainPart, int>? Dropped;

    /// <summary>Pixels that all of it takes.</summary>
    public (int Width, int Height) Size => picture is null
        ? (0, 0)
        : ((picture.Nodes.Max(node => node.Column) * ColumnStep) + NodeWidth + (2 * Margin), (picture.HasLoop ? RowStep : 0) + NodeHeight + (2 * Margin));

    public void Show(ChainPicture next)
    {
        picture = next;
        diagram.Batch(() =>
        {
            diagram.Links.Clear();
            diagram.Nodes.Clear();
            var nodes = next.Nodes.ToDictionary(node => node.Key, Add);
            foreach (var link in next.Links)
                diagram.Links.Add(new LinkModel(nodes[link.From].Out, nodes[link.To].In) { Locked = true, TargetMarker = LinkMarker.Arrow });
        });
    }

    public RenderFragment Canvas => builder =>
    {
        builder.OpenComponent<CascadingValue<BlazorDiagram>>(0);
        builder.AddComponentParameter(1, nameof(CascadingValue<>.Value), diagram);
        builder.AddComponentParameter(2, nameof(CascadingValue<>.IsFixed), true);
        builder.AddComponentParameter(3, nameof(CascadingValue<>.ChildContent), (RenderFragment)(inner =>
        {
            inner.OpenComponent<DiagramCanvas>(0);
            inner.CloseComponent();
        }));
        builder.CloseComponent();
    };

    public void Dispose()
    {
        foreach (var node in diagram.Nodes)
            node.Moved -= OnMoved;
    }

    private ChainNode Add(ChainPictureNode stop)
    {
        var node = new ChainNode(stop, new(Margin + (stop.Column * ColumnStep), Margin + (stop.Part == ChainPart.Loop ? RowStep : 0)), new(NodeWidth, NodeHeight));
        node.Moved += OnMoved;
        return diagram.Nodes.Add(node);
    }

    private void OnMoved(MovableModel moved)
    {
        if (picture is null || moved is not ChainNode { Stop.Device: { } device } node)
            return;
        var part = picture.HasLoop && node.Position.Y > Margin + (RowStep / 2.0) ? ChainPart.Loop : ChainPart.Front;
        var before = diagram.Nodes.OfType<ChainNode>().Count(other => other.Stop.Device is not null && other != node && other.Stop.Part == part && other.Position.X < node.Position.X);
        Dropped?.Invoke(device, part, before);
    }
}

/// <summary>A stop with a port at its left and its right. Size and ports are ours, so the browser is never asked to measure them.</summary>
public sealed class ChainNode : NodeModel
{
    private const int PortSize = 8;

    internal ChainNode(ChainPictureNode stop, Point at, Size size)
        : base(at)
    {
        (Stop, Size, ControlledSize, Locked) = (stop, size, true, stop.Device is null);
        In = PortAt(PortAlignment.Left, at.X);
        Out = PortAt(PortAlignment.Right, at.X + size.Width);
    }

    internal ChainPictureNode Stop { get; }

    internal PortModel In { get; }

    internal PortModel Out { get; }

    private PortModel PortAt(PortAlignment side, double x)
    {
        var port = AddPort(new PortModel(this, side, new Point(x - (PortSize / 2.0), Position.Y + ((Size!.Height - PortSize) / 2)), new Size(PortSize, PortSize)));
        (port.Initialized, port.Locked) = (true, true);
        return port;
    }
}
