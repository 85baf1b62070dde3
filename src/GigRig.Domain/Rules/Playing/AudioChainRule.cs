using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;

namespace GigRig.Domain.Rules.Playing;

internal sealed class AudioChainRule : IRule
{
    public string Id => RuleIds.AudioChain;

    public string Sentence => "The audio chain visits every device on the board that carries audio once, and uses a loop only where the amp has one.";

    public IEnumerable<Violation> Check(RigProblem problem, Rig rig)
    {
        var visits = rig.Chain.Front.Concat(rig.Chain.Loop).CountBy(id => id).ToDictionary();
        foreach (var device in problem.DevicesOn(rig).Where(device => device.CarriesAudio && !visits.ContainsKey(device.Id)))
            yield return new(Id, [device.Id], "", $"{device.Name} is on the board but not in the chain.");
        foreach (var (id, count) in visits)
        {
            if (problem.FindDevice(id) is not { } device)
                continue;
            if (count > 1)
                yield return new(Id, [id], $"{count - 1}", $"{device.Name} is in the chain {count} times.");
            if (!device.CarriesAudio)
                yield return new(Id, [id], "", $"{device.Name} is in the chain but has no audio input or output.");
            if (!rig.Holds(id))
                yield return new(Id, [id], "", $"{device.Name} is in the chain but not on the board.");
        }

        if (rig.Chain.Loop.Count > 0 && problem.Amp is not { Loop: not AmpLoop.None })
            yield return new(Id, rig.Chain.Loop, "", $"{rig.Chain.Loop.Select(problem.NameOf).Listed()} should go into a loop, but {(problem.Amp is { } amp ? $"{amp.Name} has none" : "there is no amp")}.");
    }
}
