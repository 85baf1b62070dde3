using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using Google.OrTools.Sat;

namespace GigRig.Benchmarks.Opponents;

/// <summary>
/// The best layout known for one model: a single rectangle for each body and plug whose size follows the turn, the no-overlap constraint,
/// two redundant cumulatives over the bodies, and their areas against the board's.
/// </summary>
internal sealed class TurningRectangles : ILayoutModel
{
    private readonly CpModel model;
    private readonly Rect board;
    private readonly NoOverlap2dConstraint apart;
    private readonly CumulativeConstraint across;
    private readonly CumulativeConstraint along;
    private readonly List<(StandingThing Thing, IntVar X, IntVar Y, BoolVar[] Turned)> stood = [];

    public TurningRectangles(Belongings belongings)
    {
        model = belongings.Model;
        board = belongings.Problem.Board.Surface;
        apart = model.AddNoOverlap2D();
        across = model.AddCumulative(board.Depth.Value);
        along = model.AddCumulative(board.Width.Value);
        var keepOuts = StandingThings.KeepOuts(belongings);
        foreach (var keepOut in keepOuts)
            AddFixed(keepOut);
        foreach (var thing in StandingThings.Of(belongings))
            Add(thing);
        var taken = keepOuts.Sum(k => (long)k.Width.Value * k.Depth.Value) + LimitModel.TopSupplyArea(belongings);
        model.Add(LimitModel.Sum(belongings, LimitModel.Area) <= ((long)board.Width.Value * board.Depth.Value) - taken);
    }

    public IEnumerable<Placement> Read(CpSolver solved) =>
        from stands in stood
        where solved.BooleanValue(stands.Thing.Present)
        let turn = stands.Turned.Length == 0 ? 0 : Array.FindIndex(stands.Turned, t => solved.BooleanValue(t))
        select new Placement(stands.Thing.Id, new(((int)solved.Value(stands.X)).Mm, ((int)solved.Value(stands.Y)).Mm), stands.Thing.Poses[turn].Turn);

    private void AddFixed(Rect rect)
    {
        var x = model.NewFixedSizeIntervalVar(rect.X.Value, rect.Width.Value, "keep-out x");
        var y = model.NewFixedSizeIntervalVar(rect.Y.Value, rect.Depth.Value, "keep-out y");
        apart.AddRectangle(x, y);
        across.AddDemand(x, rect.Depth.Value);
        along.AddDemand(y, rect.Width.Value);
    }

    private void Add(StandingThing thing)
    {
        var poses = thing.Poses;
        var x = model.NewIntVar(poses.Min(p => p.FromX), poses.Max(p => p.ToX), $"x {thing.Id}");
        var y = model.NewIntVarFromDomain(poses.Select(p => p.Fronts).Aggregate((a, b) => a.UnionWith(b)), $"y {thing.Id}");
        var turned = poses.Length == 1 ? [] : poses.Select(p => model.NewBoolVar($"{thing.Id} at {p.Turn}")).ToArray();
        if (turned.Length > 0)
            model.AddExactlyOne(turned);
        foreach (var (pose, taken) in poses.Zip(turned))
        {
            model.AddLinearConstraint(x, pose.FromX, pose.ToX).OnlyEnforceIf(taken);
            model.AddLinearExpressionInDomain(y, pose.Fronts).OnlyEnforceIf(taken);
        }

        var isAcross = Across(thing, turned);
        for (var piece = 0; piece < poses[0].Pieces.Length; piece++)
            AddPiece(thing, piece, x, y, turned, isAcross);
        stood.Add((thing, x, y, turned));
    }

    private void AddPiece(StandingThing thing, int piece, IntVar x, IntVar y, BoolVar[] turned, BoolVar? isAcross)
    {
        var byPose = thing.Poses.Select(p => p.Pieces[piece]).ToArray();
        var (width, depth) = (Size(thing, isAcross, piece, r => r.Width.Value), Size(thing, isAcross, piece, r => r.Depth.Value));
        var spanX = Span(Start(x, turned, [.. byPose.Select(r => r.X.Value)]), width, isAcross is not null, thing.Present);
        var spanY = Span(Start(y, turned, [.. byPose.Select(r => r.Y.Value)]), depth, isAcross is not null, thing.Present);
        apart.AddRectangle(spanX, spanY);
        if (piece > 0)
            return;
        across.AddDemand(spanX, depth);
        along.AddDemand(spanY, width);
    }

    /// <summary>Whether width and depth change places; null where they always or never do.</summary>
    private BoolVar? Across(StandingThing thing, BoolVar[] turned)
    {
        var which = turned.Where((_, p) => thing.Poses[p].IsAcross).ToArray();
        if (which.Length == 0 || which.Length == turned.Length)
            return null;
        if (which.Length == 1)
            return which[0];
        var any = model.NewBoolVar($"{thing.Id} across");
        model.Add(LinearExpr.Sum(which) == any);
        return any;
    }

    private static LinearExpr Size(StandingThing thing, BoolVar? isAcross, int piece, Func<Rect, int> measure)
    {
        if (isAcross is null)
            return LinearExpr.Constant(measure(thing.Poses[0].Pieces[piece]));
        var (upright, across) = (thing.Poses.First(p => !p.IsAcross), thing.Poses.First(p => p.IsAcross));
        return LinearExpr.Affine(isAcross, measure(across.Pieces[piece]) - measure(upright.Pieces[piece]), measure(upright.Pieces[piece]));
    }

    private LinearExpr Start(IntVar corner, BoolVar[] turned, int[] offsets)
    {
        if (offsets.Distinct().Count() == 1)
            return corner + offsets[0];
        var start = model.NewIntVar(offsets.Min(), Math.Max(board.Width.Value, board.Depth.Value) + offsets.Max(), "start");
        model.Add(start == corner + LinearExpr.WeightedSum(turned, offsets));
        return start;
    }

    private IntervalVar Span(LinearExpr start, LinearExpr size, bool varies, BoolVar present)
    {
        // Where start and size both vary, their sum is more than the solver takes for an end.
        var reach = 3 * (board.Width.Value + board.Depth.Value);
        var end = varies ? model.NewIntVar(-reach, reach, "end") : start + size;
        return model.NewOptionalIntervalVar(start, size, end, present, "piece");
    }
}
