using GigRig.Domain.Events;
using GigRig.Domain.Rigs;
using GigRig.Domain.Wishes;

namespace GigRig.Domain.Rules.Playing;

internal sealed class SoundsPlayableRule : IRule
{
    public string Id => RuleIds.SoundsPlayable;

    public string Sentence => "Every sound that must be there can be played: all its roles on at one moment.";

    public IEnumerable<Violation> Check(RigProblem problem, Rig rig)
    {
        var functions = problem.FunctionsIn(rig).ToList();
        foreach (var (sound, covers) in Coverage.Of(problem, rig).Sounds)
        {
            if (sound.Level != NeedLevel.Must || covers is not null)
                continue;
            var missing = sound.Roles.Where(role => !functions.Any(f => f.Function.Role.Meets(role))).Select(problem.TitleOf).ToList();
            var why = missing.Count > 0
                ? $"nothing in the rig does {missing.Listed()}"
                : $"{sound.Roles.Select(problem.TitleOf).Listed()} cannot all be on at once";
            yield return new(Id, [], "", $"{sound.Name} cannot be played: {why}.");
        }
    }
}
