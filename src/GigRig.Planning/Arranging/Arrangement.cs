using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.Domain.Wishes;
using GigRig.Planning.Fitting;

namespace GigRig.Planning.Arranging;

/// <summary>The things of a rig that stand on its board, with what decides how well they stand: devices in the order of the rig, a supply on top last.</summary>
internal sealed class Arrangement
{
    private readonly Rig rig;
    private readonly GearId[] ids;
    private readonly bool hasSupply;
    private readonly Ends[][] ends;
    private readonly int[] presses;
    private readonly int boardWidth;

    public Arrangement(RigProblem problem, Rig rig)
    {
        this.rig = rig;
        boardWidth = problem.Board.Width.Value;
        Device[] devices = [.. rig.Placements.Select(p => p.Id).Distinct().Select(problem.FindDevice).OfType<Device>()];
        var supply = Fitting.Shapes.OfSupply(problem);
        hasSupply = supply is not null;
        ids = [.. devices.Select(d => d.Id), .. hasSupply ? [problem.Supply!.Id] : Array.Empty<GearId>()];
        Shapes = [.. devices.Select(d => Fitting.Shapes.Of(problem, d)), .. supply is null ? Array.Empty<Shape>() : [supply]];
        ends = [.. Shapes.Select((shape, i) => shape.Poses.Select(pose => i < devices.Length ? EndsOf(devices[i], pose.Turn, problem.Options.Plugs) : default).ToArray())];
        var often = Reach.Presses(Coverage.Of(problem, rig));
        presses = [.. ids.Select(id => often.GetValueOrDefault(id))];
        Leads = [.. LeadsAlong(rig.Chain.Front), .. LeadsAlong(rig.Chain.Loop)];
        Others = [.. Shapes.Select((_, i) => Leads.Where(l => l.From == i || l.To == i).ToArray())];
    }

    public Shape[] Shapes { get; }

    /// <summary>The patch leads, each from the output of one thing to the input of the next.</summary>
    public (int From, int To)[] Leads { get; }

    /// <summary>For each thing the leads that end at it.</summary>
    public (int From, int To)[][] Others { get; }

    public GearId IdOf(int item) => ids[item];

    /// <summary>Where things stand in the rig; null where something stands nowhere, or turned as it may not be.</summary>
    public Standing[]? Given()
    {
        var standings = new Standing[ids.Length];
        for (var i = 0; i < ids.Length; i++)
        {
            var place = hasSupply && i == ids.Length - 1 ? rig.Supply : rig.Placements.First(p => p.Id == ids[i]);
            var pose = place is null ? -1 : Array.FindIndex(Shapes[i].Poses, p => p.Turn == place.Turn);
            if (pose < 0)
                return null;
            standings[i] = new(i, pose, place!.At.X.Value, place.At.Y.Value);
        }

        return standings;
    }

    /// <summary>The rig with its things stood so, each once, and no place for a supply that has none; what else it holds stays as it is.</summary>
    public Rig Stood(Standing[] standings)
    {
        var places = standings.ToDictionary(s => ids[s.Item], s => new Placement(ids[s.Item], new(s.X.Mm, s.Y.Mm), Shapes[s.Item].Poses[s.Pose].Turn));
        return rig with
        {
            Placements = rig.Placements.DistinctBy(p => p.Id).Select(p => places.GetValueOrDefault(p.Id, p)).ToValueList(),
            Supply = hasSupply ? places[ids[^1]] : null,
        };
    }

    /// <summary>What <c>Scorer</c> would count. Standings by item.</summary>
    public Cost CostOf(Standing[] standings)
    {
        long leads = 0, reach = 0;
        foreach (var (from, to) in Leads)
            leads += Length(standings[from], standings[to]);
        foreach (var standing in standings)
            reach += ReachOf(standing);
        return new(leads, reach, standings.Select(s => s.Y).Distinct().Count());
    }

    /// <summary>From the output of one to the input of the other.</summary>
    public int Length(Standing from, Standing to)
    {
        var (a, b) = (ends[from.Item][from.Pose], ends[to.Item][to.Pose]);
        return Math.Abs(from.X + a.OutX - to.X - b.InX) + Math.Abs(from.Y + a.OutY - to.Y - b.InY);
    }

    public long ReachOf(Standing standing)
    {
        var switches = Shapes[standing.Item].Poses[standing.Pose].Switches;
        if (switches.Length == 0 || presses[standing.Item] == 0)
            return 0;
        var least = long.MaxValue;
        foreach (var (x, y) in switches)
            least = Math.Min(least, Reach.Way(new((standing.X + x).Mm, (standing.Y + y).Mm), boardWidth.Mm));
        return presses[standing.Item] * least;
    }

    /// <summary>Where a lead's end would have to be level with its other end, as an offset of this thing's corner: for every lead to something that stands.</summary>
    public IEnumerable<(int X, int Y)> LevelWith(int item, int pose, Standing?[] stood)
    {
        foreach (var (from, to) in Others[item])
        {
            var other = from == item ? to : from;
            if (stood[other] is not { } at || other == item)
                continue;
            var (mine, theirs) = (ends[item][pose], ends[other][at.Pose]);
            yield return from == item
                ? (at.X + theirs.InX - mine.OutX, at.Y + theirs.InY - mine.OutY)
                : (at.X + theirs.OutX - mine.InX, at.Y + theirs.OutY - mine.InY);
        }
    }

    /// <summary>The x of a thing's lead ends from its own corner.</summary>
    public (int Out, int In) EndsAlong(int item, int pose) => (ends[item][pose].OutX, ends[item][pose].InX);

    private IEnumerable<(int From, int To)> LeadsAlong(ValueList<GearId> part)
    {
        int[] stops = [.. part.Select(id => Array.IndexOf(ids, id)).Where(i => i >= 0)];
        return stops.Zip(stops.Skip(1));
    }

    private static Ends EndsOf(Device device, Turn turn, PlugSizes plugs)
    {
        var atOrigin = new Placement(device.Id, default, turn);
        var (@out, @in) = (PatchLeads.TipOf(device, atOrigin, JackUse.Out, plugs), PatchLeads.TipOf(device, atOrigin, JackUse.In, plugs));
        return new(@out.X.Value, @out.Y.Value, @in.X.Value, @in.Y.Value);
    }

    private readonly record struct Ends(int OutX, int OutY, int InX, int InY);
}
