using GigRig.Domain.Gear;

namespace GigRig.Domain.Rigs;

/// <summary>Whether devices can be fed together, and how.</summary>
public abstract record HookUpAnswer
{
    private HookUpAnswer()
    {
    }

    /// <summary>One feed for each device that needs power, on as few batteries as can be.</summary>
    public sealed record Fed(ValueList<Feed> HookUp) : HookUpAnswer;

    /// <summary>Proved: these cannot all be fed; without any one of them the rest can, or it was not proved that they cannot.</summary>
    /// <param name="Sentence">Who draws what, and what there is, in numbers.</param>
    public sealed record Starved(ValueList<GearId> Culprits, string Sentence) : HookUpAnswer;

    /// <summary>Time ran out, or there are more ways to join outlets than could be looked at.</summary>
    public sealed record Undecided : HookUpAnswer;
}
