using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;

namespace GigRig.Domain.Rules.Feeding;

internal sealed class DevicesFedRule : IRule
{
    public string Id => RuleIds.DevicesFed;

    public string Sentence => "Every device that needs power is fed once, from an outlet or from a battery of its own.";

    public IEnumerable<Violation> Check(RigProblem problem, Rig rig)
    {
        var placed = problem.DevicesOn(rig).ToList();
        foreach (var device in placed.Where(device => device.Power is not null))
        {
            var feeds = rig.HookUp.Where(feed => feed.Device == device.Id).ToList();
            if (feeds.Count == 0)
                yield return new(Id, [device.Id], "", $"{device.Name} needs {device.Power!.Current} and is not hooked up.");
            if (feeds.Count > 1)
                yield return new(Id, [device.Id], $"{feeds.Count - 1}", $"{device.Name} is hooked up {feeds.Count} times.");
            if (feeds.Any(feed => feed.OnBattery) && !device.Power!.Battery)
                yield return new(Id, [device.Id], "", $"{device.Name} is to run on a battery but cannot.");
        }

        foreach (var device in placed.Where(device => device.Power is null && rig.HookUp.Any(feed => feed.Device == device.Id)))
            yield return new(Id, [device.Id], "", $"{device.Name} takes no power but is hooked up.");
        foreach (var device in rig.HookUp.Select(feed => problem.FindDevice(feed.Device)).OfType<Device>().Distinct().Except(placed))
            yield return new(Id, [device.Id], "", $"{device.Name} is hooked up but not on the board.");
    }
}
