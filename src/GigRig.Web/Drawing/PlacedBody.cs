using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.Domain.Wishes;
using GigRig.Web.Sheets;

namespace GigRig.Web.Drawing;

/// <summary>A thing where it stands, before its label is cut to the size of the letters.</summary>
internal sealed record PlacedBody(
    GearId Id,
    int Number,
    string Name,
    string Roles,
    HookUpLine? HookUp,
    Placement Placement,
    SceneArea Area,
    RoleGlyph Glyph,
    ValueList<ScenePlug> Plugs,
    ValueList<SceneSpot> Switches)
{
    public SceneBody Labelled(double textSize) => new(
        Id,
        Number,
        Name,
        Area,
        Placement.Turn,
        FrontEdge(),
        Glyph,
        LabelFitter.Fit(Area.Width, Area.Height, textSize, Name, Roles, HookUp?.Tag),
        Plugs,
        Switches);

    private SceneEdge FrontEdge() => Placement.Turn switch
    {
        // Clockwise from above: the front edge faces left after one quarter turn, the rear after two.
        Turn.Quarter => new(new(Area.X, Area.Y), new(Area.X, Area.Bottom)),
        Turn.Half => new(new(Area.X, Area.Y), new(Area.Right, Area.Y)),
        Turn.ThreeQuarter => new(new(Area.Right, Area.Y), new(Area.Right, Area.Bottom)),
        _ => new(new(Area.X, Area.Bottom), new(Area.Right, Area.Bottom)),
    };
}

/// <summary>Finds what stands on the board.</summary>
internal static class PlacedBodies
{
    /// <summary>In the order of their numbers. A placement of something the problem does not know is left out: it has no size to draw.</summary>
    public static IEnumerable<PlacedBody> Of(RigProblem problem, Rig rig)
    {
        var numbers = RigNumbers.Of(rig);
        var coverage = Coverage.Of(problem, rig);
        var hookUp = HookUpSheet.Of(problem, rig).Lines.DistinctBy(line => line.Device).ToDictionary(line => line.Device);

        var devices = rig.Placements
            .Select(placement => (placement, device: problem.FindDevice(placement.Id)))
            .Where(found => found.device is not null)
            .Select(found => DeviceBody(found.placement, found.device!));
        return devices.Concat(SupplyBody(problem, rig, numbers)).OrderBy(body => body.Number);

        PlacedBody DeviceBody(Placement placement, Device device)
        {
            var depth = problem.Board.Depth;
            var outline = Outline.Of(device, problem.Options.Plugs);
            var plugs = device.Jacks.Where(jack => jack.Side != Side.Top).Zip(outline.Placed(placement).Plugs);
            return new(
                device.Id,
                numbers[device.Id],
                device.Name,
                CoverSheet.RolesOf(problem, coverage, device.Id, device.Functions),
                hookUp.GetValueOrDefault(device.Id),
                placement,
                SceneArea.Of(outline.BodyAt(placement), depth),
                GlyphOf(coverage, device),
                plugs.Select(pair => new ScenePlug(pair.First.Use == JackUse.Power ? PlugKind.Power : PlugKind.Audio, SceneArea.Of(pair.Second, depth))).ToValueList(),
                outline.PlacedSwitches(placement).Select(point => SceneSpot.Of(point, depth)).ToValueList());
        }
    }

    private static IEnumerable<PlacedBody> SupplyBody(RigProblem problem, Rig rig, IReadOnlyDictionary<GearId, int> numbers)
    {
        if (rig.Supply is not { } placement || problem.Supply is not { Size: { } size } supply)
            yield break;
        var area = SceneArea.Of(Outline.Of(size).BodyAt(placement), problem.Board.Depth);
        yield return new(supply.Id, numbers[placement.Id], supply.Name, "Power supply", null, placement, area, RoleGlyphs.Supply, [], []);
    }

    private static RoleGlyph GlyphOf(Coverage coverage, Device device)
    {
        var done = coverage.Needs.Select(need => need.Cover).OfType<Cover>()
            .Concat(coverage.Sounds.SelectMany(sound => sound.Covers ?? []))
            .FirstOrDefault(cover => cover.Thing == device.Id);
        var role = done?.Function.Role ?? device.Functions.MaxBy(function => function.Rating)?.Role;
        return role is { } known ? RoleGlyphs.Of(known) : RoleGlyphs.Other;
    }
}
