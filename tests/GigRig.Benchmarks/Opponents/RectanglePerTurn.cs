using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using Google.OrTools.Sat;

namespace GigRig.Benchmarks.Opponents;

/// <summary>
/// The textbook layout: for each turn of a device an optional rectangle for its body and one for each plug, of fixed sizes, and the no-overlap constraint alone.
/// </summary>
internal sealed class RectanglePerTurn : ILayoutModel
{
    private readonly CpModel model;
    private readonly NoOverlap2dConstraint apart;
    private readonly List<(StandingThing Thing, IntVar X, IntVar Y, BoolVar[] Turned)> stood = [];

    public RectanglePerTurn(Belongings belongings)
    {
        model = belongings.Model;
        apart = model.AddNoOverlap2D();
        foreach (var keepOut in StandingThings.KeepOuts(belongings))
            apart.AddRectangle(model.NewFixedSizeIntervalVar(keepOut.X.Value, keepOut.Width.Value, "keep-out x"), model.NewFixedSizeIntervalVar(keepOut.Y.Value, keepOut.Depth.Value, "keep-out y"));
        foreach (var thing in StandingThings.Of(belongings))
            Add(thing, belongings.Problem.Board.Surface);
    }

    public IEnumerable<Placement> Read(CpSolver solved) =>
        from stands in stood
        where solved.BooleanValue(stands.Thing.Present)
        let turn = stands.Thing.Poses[Array.FindIndex(stands.Turned, t => solved.BooleanValue(t))].Turn
        select new Placement(stands.Thing.Id, new(((int)solved.Value(stands.X)).Mm, ((int)solved.Value(stands.Y)).Mm), turn);

    private void Add(StandingThing thing, Rect board)
    {
        var x = model.NewIntVar(0, board.Width.Value, $"x {thing.Id}");
        var y = model.NewIntVar(0, board.Depth.Value, $"y {thing.Id}");
        var turned = thing.Poses.Select(p => model.NewBoolVar($"{thing.Id} at {p.Turn}")).ToArray();
        model.Add(LinearExpr.Sum(turned) == thing.Present);
        foreach (var (pose, taken) in thing.Poses.Zip(turned))
        {
            model.AddLinearConstraint(x, pose.FromX, pose.ToX).OnlyEnforceIf(taken);
            model.AddLinearExpressionInDomain(y, pose.Fronts).OnlyEnforceIf(taken);
            foreach (var piece in pose.Pieces)
            {
                apart.AddRectangle(
                    model.NewOptionalFixedSizeIntervalVar(x + piece.X.Value, piece.Width.Value, taken, "piece x"),
                    model.NewOptionalFixedSizeIntervalVar(y + piece.Y.Value, piece.Depth.Value, taken, "piece y"));
            }
        }

        stood.Add((thing, x, y, turned));
    }
}
