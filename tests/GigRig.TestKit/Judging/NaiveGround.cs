using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;

namespace GigRig.TestKit.Judging;

/// <summary>Whether everything has its place, millimetre by millimetre.</summary>
internal static class NaiveGround
{
    public static IEnumerable<Fault> Faults(RigProblem problem, Rig rig)
    {
        var board = problem.Board;
        var (width, depth) = (board.Width.Value, board.Depth.Value);
        var bodies = NaiveBody.All(problem, rig);
        var forbidden = board.KeepOuts.SelectMany(k => NaiveBody.Cells(k.X.Value, k.Y.Value, k.Width.Value, k.Depth.Value)).ToHashSet();

        foreach (var body in bodies)
        {
            if (body.Body.Any(c => c.X < 0 || c.Y < 0 || c.X >= width || c.Y >= depth))
                yield return new("inside-board", body.Id);
            if (body.Plugs.Any(c => c.X < -board.Overhang.Left.Value || c.Y < -board.Overhang.Front.Value || c.X >= width + board.Overhang.Right.Value || c.Y >= depth + board.Overhang.Rear.Value))
                yield return new("plug-overhang", body.Id);
            if (forbidden.Overlaps(body.Body) || forbidden.Overlaps(body.Plugs))
                yield return new("keep-outs", body.Id);
            if (!Stands(board, body))
                yield return new("rails", body.Id);
            if (board.ClearanceOver is { } lid && body.Height > lid.Value)
                yield return new("lid", body.Id);
        }

        foreach (var (a, b) in Pairs(bodies))
        {
            if (a.Body.Concat(a.Plugs).Intersect(b.Body.Concat(b.Plugs)).Any())
                yield return new("things-apart", $"{a.Id} {b.Id}");
            if (TooNear(a, b, problem.Options.SwitchSpacing.Value))
                yield return new("switch-spacing", $"{a.Id} {b.Id}");
        }

        foreach (var fault in OfTurns(problem, rig).Concat(OfSupply(problem, rig)))
            yield return fault;
        var devices = NaiveBelongings.PlacedDevices(problem, rig).Sum(d => d.Mass.Value);
        var supply = problem.Supply is { Mount: SupplyMount.Under or SupplyMount.Top } s ? s.Mass.Value : 0;
        if (board.MaxLoad is { } most && devices + supply > most.Value)
            yield return new("board-load", "too heavy");
        // Bodies that overlap cover twice, as the rule counts them.
        if (problem.Event.Limits.FreeArea is { } free && 100L * bodies.Sum(b => b.Body.Count) > (100L - free) * width * depth)
            yield return new("free-area", "too full");
    }

    private static bool Stands(Board board, NaiveBody body)
    {
        if (board.Rails.Count == 0)
            return true;
        var rows = Enumerable.Range(body.Front, body.Rear - body.Front).ToList();
        var bearing = new List<Rail>();
        foreach (var rail in board.Rails)
        {
            var on = rows.Count(row => row >= rail.From.Value && row < rail.To.Value);
            if (on == rows.Count)
                return true;
            if (on >= Math.Min(10, rail.To.Value - rail.From.Value))
                bearing.Add(rail);
        }

        var middle = (body.Front + body.Rear) / 2.0;
        return bearing.Count >= 2 && middle >= bearing.Min(r => r.From.Value) && middle <= bearing.Max(r => r.To.Value);
    }

    private static bool TooNear(NaiveBody a, NaiveBody b, int spacing) =>
        a.Switches.Any(p => b.Switches.Any(q => Math.Pow(p.X - q.X, 2) + Math.Pow(p.Y - q.Y, 2) < Math.Pow(spacing, 2)));

    private static IEnumerable<Fault> OfTurns(RigProblem problem, Rig rig)
    {
        foreach (var placement in rig.Placements)
            if (problem.Devices.Any(d => d.Id.Value == placement.Id.Value && !d.Turns.Contains(placement.Turn)))
                yield return new("allowed-turn", placement.Id.Value);
        if (rig.Supply is { Turn: Turn.Half or Turn.ThreeQuarter } && problem.Supply is not null)
            yield return new("allowed-turn", "supply");
    }

    private static IEnumerable<Fault> OfSupply(RigProblem problem, Rig rig)
    {
        if (problem.Supply is not { } supply)
            yield break;
        if ((supply.Mount == SupplyMount.Top) != (rig.Supply is not null))
            yield return new("supply-space", "placed or not");
        if (supply.Mount != SupplyMount.Under)
            yield break;
        var (size, board) = (supply.Size!.Value, problem.Board);
        var straight = size.Width <= board.Width && size.Depth <= board.Depth;
        var turned = size.Depth <= board.Width && size.Width <= board.Depth;
        var low = board.ClearanceUnder is not { } under || size.Height <= under;
        if (!(straight || turned) || !low)
            yield return new("supply-space", "under");
    }

    private static IEnumerable<(NaiveBody A, NaiveBody B)> Pairs(List<NaiveBody> bodies) =>
        from i in Enumerable.Range(0, bodies.Count)
        from j in Enumerable.Range(0, i)
        select (bodies[j], bodies[i]);
}
