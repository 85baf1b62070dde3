using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;

namespace GigRig.Planning.Powering;

/// <summary>What the devices of a problem take from its supply, worked out once.</summary>
internal sealed class Hunger
{
    private readonly RigProblem problem;
    private readonly FeedPatterns patterns;

    public Hunger(RigProblem problem, StarvedSets? known = null)
    {
        this.problem = problem;
        Outlets = OutletClass.Of(problem.Supply);
        patterns = new(Outlets, problem.Adapters);
        Search = new(Outlets, problem.Adapters, problem.Supply?.TotalCurrent?.Value, known);
    }

    public OutletClass[] Outlets { get; }

    public PowerSearch Search { get; }

    /// <summary>False where outlets can be joined in more ways than could be listed, for what was asked so far: then nothing that is not fed is proved unfit.</summary>
    public bool ListsEveryFeed => patterns.IsComplete;

    /// <summary>Null where it takes no power.</summary>
    public Consumer? Of(Device device)
    {
        if (device.Power is not { } need)
            return null;
        var draw = (int)Math.Ceiling(need.Current.Value * (1 + problem.Options.Headroom));
        return new(device.Id, need, draw, patterns.For(need, draw));
    }

    public bool IsFedAlone(Consumer? consumer) =>
        consumer is null || consumer.Need.Battery || (consumer.Patterns.Length > 0 && consumer.Draw <= (problem.Supply?.TotalCurrent?.Value ?? int.MaxValue));
}
