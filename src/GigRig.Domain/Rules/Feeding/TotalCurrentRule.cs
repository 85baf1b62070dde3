using GigRig.Domain.Rigs;

namespace GigRig.Domain.Rules.Feeding;

internal sealed class TotalCurrentRule : IRule
{
    public string Id => RuleIds.TotalCurrent;

    public string Sentence => "All outlets together give no more than the supply can.";

    public IEnumerable<Violation> Check(RigProblem problem, Rig rig)
    {
        if (problem.Supply is not { TotalCurrent: not null } supply)
            yield break;
        var load = SupplyLoad.Of(problem, rig);
        if (load.Taken > load.Gives)
            yield return new(Id, [supply.Id], $"{load.Taken - load.Gives}", $"The outlets in use give {load.Taken}; {supply.Name} gives {load.Gives} in all.");
    }
}
