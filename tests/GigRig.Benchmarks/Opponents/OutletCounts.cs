using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using Google.OrTools.Sat;

namespace GigRig.Benchmarks.Opponents;

/// <summary>
/// The best hook-up known for one model: how many devices of a kind are fed in which way, and no more outlets of a kind than there are.
/// Neither alike outlets nor alike devices are told apart; who gets which is settled afterwards. Leaves out splitters.
/// </summary>
internal sealed class OutletCounts : IHookUpModel
{
    private readonly OutletKind[] outlets;
    private readonly List<DeviceKind> kinds = [];

    public OutletCounts(Belongings belongings)
    {
        var (model, problem) = (belongings.Model, belongings.Problem);
        outlets = OutletKind.Of(problem.Supply);
        var total = problem.Supply?.TotalCurrent;
        var needy = belongings.Devices.Where(d => d.Thing.Power is not null).Select(d =>
        {
            var draw = d.Thing.Power!.DrawWith(problem.Options.Headroom).Value;
            return (Device: d, Draw: draw, Ways: FeedWay.For(d.Thing.Power, draw, outlets, problem.Adapters).ToArray());
        });
        foreach (var alike in needy.GroupBy(n => (string.Join('|', n.Ways.Select(w => w.Key)), Draw: total is null ? 0 : n.Draw)))
        {
            var ways = alike.First().Ways.Select(w => (w, model.NewIntVar(0, alike.Count(), w.Key))).ToArray();
            var members = alike.Select(n => (n.Device, OnBattery: n.Device.Thing.Power!.Battery ? model.NewBoolVar("on battery") : null)).ToArray();
            foreach (var (device, onBattery) in members)
            {
                if (onBattery is not null)
                    model.AddImplication(onBattery, device.Taken);
            }

            var kind = new DeviceKind(alike.Key.Draw, ways, members);
            model.Add(LinearExpr.Sum(ways.Select(w => w.Item2)) == kind.Fed);
            kinds.Add(kind);
        }

        for (var o = 0; o < outlets.Length; o++)
            Cap(w => w.UsesOf(o), outlets[o].Ids.Length);
        Cap(w => w.ParallelLeads, problem.Adapters.Parallel);
        Cap(w => w.Join == OutletJoin.Series ? 1 : 0, problem.Adapters.Series);
        Cap(w => w.Reversed ? 1 : 0, problem.Adapters.Reverse);
        if (total is not null)
        {
            var drawn = kinds.SelectMany(k => k.Ways, (k, w) => LinearExpr.Term(w.Times, (long)k.Draw * (w.Way.Join == OutletJoin.Series ? 2 : 1)));
            model.Add(LinearExpr.Sum(drawn.Prepend(LinearExpr.Constant(0))) <= total.Value.Value);
        }

        void Cap(Func<FeedWay, int> amount, int most) =>
            model.Add(LinearExpr.Sum(kinds.SelectMany(k => k.Ways).Select(w => LinearExpr.Term(w.Times, amount(w.Way))).Prepend(LinearExpr.Constant(0))) <= most);
    }

    public IEnumerable<Feed> Read(CpSolver solved)
    {
        var free = outlets.Select(o => new Queue<string>(o.Ids)).ToArray();
        foreach (var kind in kinds)
        {
            var ways = new Queue<FeedWay>(kind.Ways.SelectMany(w => Enumerable.Repeat(w.Way, (int)solved.Value(w.Times))));
            foreach (var (device, onBattery) in kind.Members.Where(m => solved.BooleanValue(m.Device.Taken)))
                yield return onBattery is not null && solved.BooleanValue(onBattery) ? Feed.FromBattery(device.Thing.Id) : Plug(device.Thing.Id, ways.Dequeue(), free);
        }
    }

    private static Feed Plug(GearId device, FeedWay way, Queue<string>[] free)
    {
        var volts = way.Join == OutletJoin.Series ? way.Settings[0] + way.Settings[1] : way.Settings[0];
        return new(device, way.Kinds.Select(k => free[k].Dequeue()).ToValueList(), way.Join, volts, way.Settings.ToValueList(), way.Reversed);
    }

    private sealed record DeviceKind(int Draw, (FeedWay Way, IntVar Times)[] Ways, (Belonging<Device> Device, BoolVar? OnBattery)[] Members)
    {
        public LinearExpr Fed => LinearExpr.Sum(Members.Select(m => m.OnBattery is null ? (LinearExpr)m.Device.Taken : m.Device.Taken - m.OnBattery));
    }
}
