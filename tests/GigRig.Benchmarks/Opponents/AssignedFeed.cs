using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using Google.OrTools.Sat;

namespace GigRig.Benchmarks.Opponents;

/// <summary>How one device is fed, outlet by outlet: which are used and at what setting, alone, in parallel or in series, reversed, or not at all.</summary>
internal sealed class AssignedFeed
{
    private readonly CpModel model;
    private readonly Device device;
    private readonly PowerNeed need;
    private readonly BoolVar single;
    private readonly BoolVar parallel;

    public AssignedFeed(CpModel model, RigProblem problem, Device device, BoolVar taken)
    {
        (this.model, this.device, Taken, need) = (model, device, taken, device.Power!);
        Draw = need.DrawWith(problem.Options.Headroom).Value;
        single = model.NewBoolVar("alone");
        parallel = model.NewBoolVar("in parallel");
        Series = model.NewBoolVar("in series");
        Battery = model.NewBoolVar("on battery");
        Reversed = model.NewBoolVar("reversed");
        ParallelLeads = model.NewIntVar(0, problem.Adapters.Parallel, "parallel leads");
        Settings = problem.Supply is { } supply ? [.. supply.Outlets.SelectMany(o => SettingsOf(o, supply.IsIsolated(o)))] : [];
        model.Add(LinearExpr.Sum([single, parallel, Series, Battery]) == taken);
        if (!need.Battery)
            model.Add(Battery == 0);
        if (need.Type == CurrentType.Ac)
            model.Add(LinearExpr.Sum([parallel, Series, Reversed]) == 0);
        model.Add(Used == single + (Series * 2) + parallel + ParallelLeads);
        model.Add(ParallelLeads >= parallel);
        model.Add(ParallelLeads <= LinearExpr.Term(parallel, problem.Adapters.Parallel));
        AddJoins();
    }

    public BoolVar Taken { get; }

    /// <summary>Milliamps with headroom.</summary>
    public int Draw { get; }

    public BoolVar Battery { get; }

    public BoolVar Series { get; }

    public BoolVar Reversed { get; }

    public IntVar ParallelLeads { get; }

    public (Outlet Outlet, Millivolts Volts, BoolVar Used)[] Settings { get; }

    private LinearExpr Used => LinearExpr.Sum(Settings.Select(s => s.Used));

    public Feed Read(CpSolver solved)
    {
        var used = Settings.Where(s => solved.BooleanValue(s.Used)).ToArray();
        if (used.Length == 0)
            return Feed.FromBattery(device.Id);
        var join = solved.BooleanValue(single) ? OutletJoin.Single : solved.BooleanValue(Series) ? OutletJoin.Series : OutletJoin.Parallel;
        var volts = join == OutletJoin.Series ? used[0].Volts + used[1].Volts : used[0].Volts;
        return new(device.Id, used.Select(s => s.Outlet.Id).ToValueList(), join, volts, used.Select(s => s.Volts).ToValueList(), solved.BooleanValue(Reversed));
    }

    /// <summary>What each setting of an outlet rules out by itself.</summary>
    private IEnumerable<(Outlet Outlet, Millivolts Volts, BoolVar Used)> SettingsOf(Outlet outlet, bool isolated)
    {
        var mismatch = need.Type == CurrentType.Dc && outlet.Polarity != need.Polarity;
        var mustBeAlone = mismatch || (need.Type == CurrentType.Dc && need.Polarity == Polarity.Positive);
        if (outlet.Type != need.Type || (mustBeAlone && !isolated))
            yield break;
        var enough = outlet.Current.Value >= Draw;
        foreach (var volts in outlet.Volts.Where(v => v <= need.Max))
        {
            var used = model.NewBoolVar($"{device.Id} from {outlet.Id} at {volts}");
            var inRange = need.Min <= volts;
            if (need.Type == CurrentType.Dc)
                model.AddImplication(used, mismatch ? Reversed : Reversed.Not());
            if (!(inRange && enough))
                model.AddImplication(used, single.Not());
            if (!(isolated && inRange))
                model.AddImplication(used, parallel.Not());
            if (!(isolated && enough))
                model.AddImplication(used, Series.Not());
            yield return (outlet, volts, used);
        }
    }

    /// <summary>What several outlets must be together.</summary>
    private void AddJoins()
    {
        model.Add(LinearExpr.WeightedSum(Settings.Select(s => s.Used), Settings.Select(s => s.Outlet.Current.Value)) >= Draw).OnlyEnforceIf(parallel);
        foreach (var volts in Settings.Select(s => s.Volts).Distinct())
        {
            // In parallel, one outlet at this setting means all of them at this setting.
            var alike = LinearExpr.Sum(Settings.Where(s => s.Volts == volts).Select(s => s.Used));
            foreach (var setting in Settings.Where(s => s.Volts == volts))
                model.Add(alike == Used).OnlyEnforceIf([parallel, setting.Used]);
        }

        var sum = LinearExpr.WeightedSum(Settings.Select(s => s.Used), Settings.Select(s => s.Volts.Value));
        model.AddLinearConstraint(sum, need.Min.Value, need.Max.Value).OnlyEnforceIf(Series);
    }
}
