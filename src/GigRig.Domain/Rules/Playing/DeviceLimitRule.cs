using GigRig.Domain.Rigs;

namespace GigRig.Domain.Rules.Playing;

internal sealed class DeviceLimitRule : IRule
{
    public string Id => RuleIds.DeviceLimit;

    public string Sentence => "There are no more devices on the board than the event allows.";

    public IEnumerable<Violation> Check(RigProblem problem, Rig rig)
    {
        if (problem.Event.Limits.Devices is { } most && problem.DevicesOn(rig).Count() is var count && count > most)
            yield return new(Id, [], (count - most).Counted("device"), $"There are {count} devices on the board; {problem.Event.Name} allows {most}.");
    }
}
