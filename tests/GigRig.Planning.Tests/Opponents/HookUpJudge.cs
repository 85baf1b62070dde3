using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;

namespace GigRig.Planning.Tests.Opponents;

/// <summary>Says whether feeds may be together, from the words of the rules. Taking a feed away never makes an allowed hook-up forbidden.</summary>
internal sealed class HookUpJudge(RigProblem problem)
{
    public bool Allows(IReadOnlyList<Feed> feeds) =>
        feeds.All(IsSound) && UsesOwnedLeads(feeds) && problem.Supply?.Outlets.All(outlet => IsSoundAt(outlet, feeds)) != false && IsWithinTotal(feeds);

    private PowerNeed NeedOf(Feed feed) => problem.FindDevice(feed.Device)!.Power!;

    private int DrawOf(Feed feed) => (int)Math.Ceiling(NeedOf(feed).Current.Value * (1 + problem.Options.Headroom));

    private bool IsSound(Feed feed)
    {
        var need = NeedOf(feed);
        if (feed.OnBattery)
            return need.Battery;
        var outlets = feed.Outlets.Select(id => problem.FindOutlet(id)!).ToList();
        if (feed.Volts < need.Min || feed.Volts > need.Max || outlets.Any(outlet => outlet.Type != need.Type))
            return false;
        if (need.Type == CurrentType.Ac)
            return feed.Join == OutletJoin.Single && !feed.Reversed && outlets[0].Current.Value >= DrawOf(feed);
        if (outlets.Any(outlet => (outlet.Polarity == need.Polarity) == feed.Reversed))
            return false;
        if (NeedsItsOwn(feed) && !outlets.All(problem.Supply!.IsIsolated))
            return false;
        return feed.Join switch
        {
            OutletJoin.Single => outlets[0].Current.Value >= DrawOf(feed),
            OutletJoin.Parallel => outlets.All(problem.Supply!.IsIsolated) && feed.Settings.Distinct().Count() == 1 && outlets.Sum(outlet => outlet.Current.Value) >= DrawOf(feed),
            _ => outlets.Count == 2 && outlets.All(problem.Supply!.IsIsolated) && outlets.Min(outlet => outlet.Current.Value) >= DrawOf(feed),
        };
    }

    private bool IsSoundAt(Outlet outlet, IReadOnlyList<Feed> feeds)
    {
        var here = feeds.Where(feed => feed.Outlets.Contains(outlet.Id)).ToList();
        return here.Count < 2
            || (outlet.Type == CurrentType.Dc
                && here.All(feed => feed.Join == OutletJoin.Single && !NeedsItsOwn(feed))
                && here.Select(feed => feed.Volts).Distinct().Count() == 1
                && here.Sum(DrawOf) <= outlet.Current.Value);
    }

    private bool UsesOwnedLeads(IReadOnlyList<Feed> feeds)
    {
        var fed = feeds.Where(feed => !feed.OnBattery).ToList();
        return fed.Count(feed => feed.Reversed) <= problem.Adapters.Reverse
            && fed.Where(feed => feed.Join == OutletJoin.Parallel).Sum(feed => feed.Outlets.Count - 1) <= problem.Adapters.Parallel
            && fed.Count(feed => feed.Join == OutletJoin.Series) <= problem.Adapters.Series
            && fed.Where(feed => feed.Join == OutletJoin.Single).GroupBy(feed => feed.Outlets[0]).Sum(outlet => outlet.Count() - 1) <= problem.Adapters.Splitter;
    }

    private bool IsWithinTotal(IReadOnlyList<Feed> feeds) =>
        problem.Supply?.TotalCurrent is not { } total
        || feeds.Where(feed => !feed.OnBattery).Sum(feed => DrawOf(feed) * (feed.Join == OutletJoin.Series ? 2 : 1)) <= total.Value;

    private bool NeedsItsOwn(Feed feed) => NeedOf(feed) is { Type: CurrentType.Dc, Polarity: var polarity } && (feed.Reversed || polarity == Polarity.Positive);
}
