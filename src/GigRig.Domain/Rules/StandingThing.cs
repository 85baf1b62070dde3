using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;

namespace GigRig.Domain.Rules;

/// <summary>A device or a top supply as it stands on the board. Things placed twice stand twice; things that are not known are left out.</summary>
internal sealed record StandingThing(GearId Id, string Name, Grams Mass, Millimetres Height, Rect Body, ValueList<Rect> Plugs, ValueList<Point> Switches)
{
    /// <summary>The body, then the plugs.</summary>
    public IEnumerable<Rect> Parts => Plugs.Prepend(Body);

    public static IReadOnlyList<StandingThing> On(RigProblem problem, Rig rig)
    {
        var things = new List<StandingThing>();
        foreach (var placement in rig.Placements)
            if (problem.FindDevice(placement.Id) is { } device)
                things.Add(Of(device.Id, device.Name, device.Mass, Outline.Of(device, problem.Options.Plugs), placement));
        if (rig.Supply is { } at && problem.Supply is { Mount: SupplyMount.Top, Size: { } size } supply)
            things.Add(Of(supply.Id, supply.Name, supply.Mass, Outline.Of(size), at));
        return things;
    }

    private static StandingThing Of(GearId id, string name, Grams mass, Outline outline, Placement placement)
    {
        var (body, plugs) = outline.Placed(placement);
        return new(id, name, mass, outline.Size.Height, body, plugs, outline.PlacedSwitches(placement));
    }
}
