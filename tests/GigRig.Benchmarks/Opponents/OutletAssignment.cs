using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using Google.OrTools.Sat;

namespace GigRig.Benchmarks.Opponents;

/// <summary>The textbook hook-up: a Boolean for each device, outlet and setting, and how the outlets of a device are joined. Leaves out splitters.</summary>
internal sealed class OutletAssignment : IHookUpModel
{
    private readonly CpModel model;
    private readonly List<AssignedFeed> feeds = [];

    public OutletAssignment(Belongings belongings)
    {
        model = belongings.Model;
        var problem = belongings.Problem;
        foreach (var device in belongings.Devices.Where(d => d.Thing.Power is not null))
            feeds.Add(new(model, problem, device.Thing, device.Taken));
        foreach (var outlet in feeds.SelectMany(f => f.Settings).GroupBy(s => s.Outlet.Id))
            model.AddAtMostOne(outlet.Select(s => s.Used));
        Cap(f => f.ParallelLeads, problem.Adapters.Parallel);
        Cap(f => f.Series, problem.Adapters.Series);
        Cap(f => f.Reversed, problem.Adapters.Reverse);
        if (problem.Supply?.TotalCurrent is { } total)
            Cap(f => (f.Taken - f.Battery + f.Series) * f.Draw, total.Value);
    }

    public IEnumerable<Feed> Read(CpSolver solved) => feeds.Where(f => solved.BooleanValue(f.Taken)).Select(f => f.Read(solved));

    private void Cap(Func<AssignedFeed, LinearExpr> amount, int most)
    {
        if (feeds.Count > 0)
            model.Add(LinearExpr.Sum(feeds.Select(amount)) <= most);
    }
}
