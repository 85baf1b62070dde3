using GigRig.Domain.Rigs;

namespace GigRig.Domain.Rules.Feeding;

internal sealed class OutletVoltageRule : IRule
{
    public string Id => RuleIds.OutletVoltage;

    public string Sentence => "What arrives at a device lies within the voltage range it is made for.";

    public IEnumerable<Violation> Check(RigProblem problem, Rig rig)
    {
        foreach (var (feed, device, need, _, _) in Connection.In(problem, rig))
        {
            var volts = feed.Arriving;
            if (volts > need.Max)
                yield return new(Id, [device.Id], $"{volts - need.Max}", $"{device.Name} gets {volts}; more than {need.Max} can destroy it.");
            if (volts < need.Min)
                yield return new(Id, [device.Id], $"{need.Min - volts}", $"{device.Name} gets {volts}; it needs at least {need.Min}.");
        }
    }
}
