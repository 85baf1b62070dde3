using GigRig.Domain.Rigs;

namespace GigRig.Domain.Rules.Feeding;

internal sealed class OutletSettingRule : IRule
{
    public string Id => RuleIds.OutletSetting;

    public string Sentence => "Every outlet in use is set to a voltage it offers, and what arrives is what the settings give.";

    public IEnumerable<Violation> Check(RigProblem problem, Rig rig)
    {
        foreach (var feed in rig.HookUp.Where(feed => problem.FindDevice(feed.Device) is not null))
        {
            var name = problem.FindDevice(feed.Device)!.Name;
            if (feed.Settings.Count != feed.Outlets.Count)
            {
                yield return new(Id, [feed.Device], "", $"{name} has {feed.Outlets.Count.Counted("outlet")} but {feed.Settings.Count.Counted("setting")}.");
                continue;
            }

            foreach (var (outlet, volts) in feed.Outlets.Zip(feed.Settings))
                if (problem.FindOutlet(outlet) is { } known && !known.Volts.Contains(volts))
                    yield return new(Id, [feed.Device], $"{volts}", $"Outlet {outlet} feeds {name} at {volts}; it can be set to {known.Volts.Select(v => $"{v}").Listed()} only.");
            if (feed.Arriving is var arriving && feed.Volts != arriving)
                yield return new(Id, [feed.Device], $"{feed.Volts}", $"{name} is said to get {feed.Volts}; its outlets give {arriving}.");
        }
    }
}
