using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.Domain.Wiring;

namespace GigRig.Web.Sheets;

/// <summary>One kind of thing to pack.</summary>
public sealed record PackLine(int Count, string Name);

/// <summary>What goes into the van for one rig.</summary>
/// <param name="Gear">Owned things, each by its name.</param>
/// <param name="Leads">The leads assigned or to be got, spares, batteries.</param>
/// <param name="Mass">Of the gear; instrument and leads are not weighed.</param>
public sealed record PackSheet(ValueList<PackLine> Gear, ValueList<PackLine> Leads, Grams Mass, bool HasInstrument)
{
    private const int SpareInstrumentLeads = 2;

    public static PackSheet Of(LeadPlan plan, LengthUnit unit) => new(
        GearOf(plan.Problem, plan.Rig).ToValueList(),
        LeadsOf(plan, unit).Where(line => line.Count > 0).ToValueList(),
        plan.Problem.MassCarried(plan.Rig),
        plan.Problem.Instrument is not null);

    private static IEnumerable<PackLine> GearOf(RigProblem problem, Rig rig)
    {
        if (problem.Instrument is { } instrument)
            yield return new(1, instrument.Name);
        yield return new(1, problem.Board.Name);
        if (problem.Supply is { } supply)
            yield return new(1, supply.Name);
        if (problem.Amp is { } amp)
            yield return new(1, amp.Name);
        foreach (var device in problem.DevicesOn(rig))
            yield return new(1, device.Name);
        foreach (var item in problem.OffBoardIn(rig))
            yield return new(1, item.Name);
    }

    private static IEnumerable<PackLine> LeadsOf(LeadPlan plan, LengthUnit unit)
    {
        var (problem, rig) = (plan.Problem, plan.Rig);
        foreach (var (lead, count) in plan.Used)
            yield return new(count, $"{lead.Name}, {LeadWords.Length(lead.Length, unit)}");
        foreach (var missing in LeadSheet.Missing(plan, unit))
            yield return missing with { Name = $"{missing.Name}, to buy or make" };
        // Common practice, no published figure: two or three instrument leads and at least one patch lead to spare.
        yield return new(plan.Hops.Any(hop => hop.Hop.Kind == HopKind.Instrument) ? SpareInstrumentLeads : 0, "spare instrument lead");
        yield return new(plan.Hops.Any(hop => hop.Hop.Kind == HopKind.Patch) ? 1 : 0, "spare patch lead");
        var fed = rig.HookUp.Where(feed => !feed.OnBattery).ToList();
        yield return new(fed.Count, "power lead");
        yield return new(fed.Count(feed => feed.Reversed), "polarity-reversing power lead");
        yield return new(fed.Where(feed => feed.Join == OutletJoin.Parallel).Sum(feed => feed.Outlets.Count - 1), "parallel power lead");
        yield return new(fed.Count(feed => feed.Join == OutletJoin.Series), "series power lead");
        yield return new(Splitters(fed), "power splitter");
        yield return new(rig.HookUp.Count(feed => feed.OnBattery), "fresh battery");
        yield return new(problem.Supply is null ? 0 : 1, "mains lead for the supply");
        yield return new(problem.Amp is null ? 0 : 1, "mains lead for the amp");
        foreach (var adapter in MainsSheet.Adapters(problem))
            yield return adapter;
    }

    private static int Splitters(IEnumerable<Feed> fed) =>
        fed.SelectMany(feed => feed.Outlets).GroupBy(outlet => outlet).Sum(group => group.Count() - 1);
}
