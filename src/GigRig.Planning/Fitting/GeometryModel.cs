using Google.OrTools.Sat;

namespace GigRig.Planning.Fitting;

/// <summary>
/// The board as a CP-SAT model: every piece of every thing is a rectangle rigidly tied to its body, no two overlap, and two redundant
/// cumulatives carry most of the proof (the rectangles alone are many times slower). A thing may be optional.
/// </summary>
internal sealed class GeometryModel
{
    private readonly CpModel model;
    private readonly Surface surface;
    private readonly NoOverlap2dConstraint apart;
    private readonly CumulativeConstraint across;
    private readonly CumulativeConstraint along;
    private readonly List<Stood> things = [];

    public GeometryModel(CpModel model, Surface surface)
    {
        this.model = model;
        this.surface = surface;
        apart = model.AddNoOverlap2D();
        across = model.AddCumulative(surface.Depth);
        along = model.AddCumulative(surface.Width);
        foreach (var keepOut in Box.Disjoint(surface.KeepOuts))
            AddFixed(keepOut);
    }

    /// <summary>Adds a thing that stands when <paramref name="present"/> holds, or always when that is null. False when no pose can stand.</summary>
    public bool Add(Shape shape, BoolVar? present, string name)
    {
        var stances = shape.Poses.Select(p => Stance.Of(p, surface)).ToArray();
        var poses = Enumerable.Range(0, stances.Length).Where(p => stances[p] is not null).ToArray();
        if (poses.Length == 0)
            return false;
        var x = model.NewIntVar(0, surface.Width - poses.Min(p => shape.Poses[p].Width), $"x {name}");
        var y = model.NewIntVar(0, surface.Depth - poses.Min(p => shape.Poses[p].Depth), $"y {name}");
        var turns = poses.Length == 1 ? [] : poses.Select(p => model.NewBoolVar($"turn {p} {name}")).ToArray();
        if (turns.Length > 0)
            model.AddExactlyOne(turns);
        var literal = present;
        for (var i = 0; i < poses.Length; i++)
            Bound(stances[poses[i]]!, x, y, turns.Length == 0 ? null : turns[i]);
        for (var piece = 0; piece < shape.Poses[0].Pieces.Length; piece++)
            AddPiece([.. poses.Select(p => shape.Poses[p].Pieces[piece])], turns, x, y, literal, piece == 0, $"{name} {piece}");
        SpaceSwitches(shape, poses, turns, x, y, literal);
        var stood = new Stood(shape, poses, turns, x, y, literal, [.. poses.Select(p => stances[p]!)]);
        KeepSideBySide(stood);
        things.Add(stood);
        return true;
    }

    /// <summary>Bodies too deep to stand behind one another stand side by side, with the gap their plugs force. Redundant, and most of the proof on a shallow board.</summary>
    private void KeepSideBySide(Stood one)
    {
        foreach (var other in things)
        {
            BoolVar? leftOf = null;
            for (var p = 0; p < one.Poses.Length; p++)
            {
                for (var q = 0; q < other.Poses.Length; q++)
                {
                    if (one.Stances[p].Pose.Depth + other.Stances[q].Pose.Depth <= surface.Depth)
                        continue;
                    leftOf ??= model.NewBoolVar("left of");
                    Precede(one, p, other, q, leftOf);
                    Precede(other, q, one, p, leftOf.Not());
                }
            }
        }
    }

    private void Precede(Stood left, int p, Stood right, int q, ILiteral when)
    {
        var apartBy = left.Stances[p].Pose.Width + PlugGap.Least(left.Stances[p], right.Stances[q]);
        model.Add(right.X - left.X >= apartBy).OnlyEnforceIf([when, .. left.Turns.Skip(p).Take(1), .. right.Turns.Skip(q).Take(1), .. new[] { left.Present, right.Present }.OfType<BoolVar>()]);
    }

    /// <summary>Things alike may be kept in order along x, so that their swaps are not searched.</summary>
    public void KeepInOrder(int first, int second)
    {
        var (a, b) = (things[first], things[second]);
        var order = model.Add(LinearExpr.Affine(a.X, surface.Depth + 1, 0) + a.Y <= LinearExpr.Affine(b.X, surface.Depth + 1, 0) + b.Y);
        if (b.Present is { } present)
            order.OnlyEnforceIf(present);
    }

    public Standing Read(CpSatRun run, int thing)
    {
        var stood = things[thing];
        var pose = stood.Turns.Length == 0 ? stood.Poses[0] : stood.Poses[Array.FindIndex(stood.Turns, t => run.IsTrue(t))];
        return new(thing, pose, (int)run.Value(stood.X), (int)run.Value(stood.Y));
    }

    private void Bound(Stance stance, IntVar x, IntVar y, BoolVar? turned)
    {
        var (left, right, _, _) = Stance.Reach(stance.Pose, surface);
        var inX = model.AddLinearConstraint(x, left, right);
        var inY = model.AddLinearExpressionInDomain(y, Google.OrTools.Util.Domain.FromIntervals([.. stance.Spans.Select(s => new[] { (long)s.From, s.To })]));
        if (turned is null)
            return;
        inX.OnlyEnforceIf(turned);
        inY.OnlyEnforceIf(turned);
    }

    private void AddPiece(Box[] byPose, BoolVar[] turns, IntVar x, IntVar y, BoolVar? present, bool isBody, string name)
    {
        var boxX = Start(x, [.. byPose.Select(b => b.X)], turns, surface.PlugSpace.X, surface.PlugSpace.Right, $"x {name}");
        var boxY = Start(y, [.. byPose.Select(b => b.Y)], turns, surface.PlugSpace.Y, surface.PlugSpace.Rear, $"y {name}");
        var width = Size([.. byPose.Select(b => b.Width)], turns, $"w {name}");
        var depth = Size([.. byPose.Select(b => b.Depth)], turns, $"d {name}");
        var spanX = Interval(boxX, width, Varies(b => b.Width), (surface.PlugSpace.X, surface.PlugSpace.Right), present, $"ix {name}");
        var spanY = Interval(boxY, depth, Varies(b => b.Depth), (surface.PlugSpace.Y, surface.PlugSpace.Rear), present, $"iy {name}");
        apart.AddRectangle(spanX, spanY);
        if (!isBody)
            return;
        across.AddDemand(spanX, depth);
        along.AddDemand(spanY, width);

        bool Varies(Func<Box, int> measure) => byPose.Select(measure).Distinct().Count() > 1;
    }

    private void AddFixed(Box box)
    {
        var spanX = model.NewFixedSizeIntervalVar(box.X, box.Width, "keep-out x");
        var spanY = model.NewFixedSizeIntervalVar(box.Y, box.Depth, "keep-out y");
        apart.AddRectangle(spanX, spanY);
        across.AddDemand(spanX, box.Depth);
        along.AddDemand(spanY, box.Width);
    }

    private LinearExpr Start(IntVar corner, int[] offsets, BoolVar[] turns, int from, int to, string name)
    {
        if (offsets.Distinct().Count() == 1)
            return corner + offsets[0];
        var start = model.NewIntVar(from, to, name);
        model.Add(start == corner + LinearExpr.WeightedSum(turns, offsets));
        return start;
    }

    private LinearExpr Size(int[] sizes, BoolVar[] turns, string name)
    {
        if (sizes.Distinct().Count() == 1)
            return LinearExpr.Constant(sizes[0]);
        if (turns.Length == 2)
            return LinearExpr.Affine(turns[1], sizes[1] - sizes[0], sizes[0]);
        var size = model.NewIntVar(sizes.Min(), sizes.Max(), name);
        model.Add(size == LinearExpr.WeightedSum(turns, sizes));
        return size;
    }

    private IntervalVar Interval(LinearExpr start, LinearExpr size, bool varies, (int From, int To) within, BoolVar? present, string name)
    {
        // Where start and size both vary, their sum is more than the solver takes for an end.
        var end = varies ? model.NewIntVar(within.From, within.To, $"end {name}") : start + size;
        return present is null ? model.NewIntervalVar(start, size, end, name) : model.NewOptionalIntervalVar(start, size, end, present, name);
    }

    private void SpaceSwitches(Shape shape, int[] poses, BoolVar[] turns, IntVar x, IntVar y, BoolVar? present)
    {
        if (surface.SwitchSpacing == 0)
            return;
        foreach (var other in things)
        {
            for (var a = 0; a < shape.Poses[0].Switches.Length; a++)
            {
                for (var b = 0; b < other.Shape.Poses[0].Switches.Length; b++)
                {
                    var dx = At(x, poses, turns, shape, p => p.Switches[a].X) - At(other.X, other.Poses, other.Turns, other.Shape, p => p.Switches[b].X);
                    var dy = At(y, poses, turns, shape, p => p.Switches[a].Y) - At(other.Y, other.Poses, other.Turns, other.Shape, p => p.Switches[b].Y);
                    var apartEnough = model.Add(Square(dx, surface.Width) + Square(dy, surface.Depth) >= surface.SwitchSpacing * surface.SwitchSpacing);
                    apartEnough.OnlyEnforceIf([.. new[] { present, other.Present }.OfType<BoolVar>()]);
                }
            }
        }
    }

    private LinearExpr Square(LinearExpr difference, int most)
    {
        var value = model.NewIntVar(-most, most, "switch distance");
        model.Add(value == difference);
        var square = model.NewIntVar(0, (long)most * most, "switch distance squared");
        model.AddMultiplicationEquality(square, value, value);
        return square;
    }

    private static LinearExpr At(IntVar corner, int[] poses, BoolVar[] turns, Shape shape, Func<Pose, int> offset) => turns.Length == 0
        ? corner + offset(shape.Poses[poses[0]])
        : corner + LinearExpr.WeightedSum(turns, poses.Select(p => offset(shape.Poses[p])));

    private sealed record Stood(Shape Shape, int[] Poses, BoolVar[] Turns, IntVar X, IntVar Y, BoolVar? Present, Stance[] Stances);
}
