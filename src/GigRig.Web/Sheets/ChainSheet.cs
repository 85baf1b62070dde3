using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Wiring;

namespace GigRig.Web.Sheets;

/// <summary>One stop of the audio order.</summary>
/// <param name="Number">As in the drawing; null where it stands nowhere.</param>
/// <param name="Reason">Why it usually stands there; empty where the problem does not know it.</param>
public sealed record ChainStop(GearId Id, int? Number, string Name, string Reason)
{
    public string Title => Number is { } number ? $"{number} {Name}" : Name;
}

/// <summary>The audio order in words. The loop is empty where everything goes in front of the amp.</summary>
/// <param name="FrontEnds">Where the front part begins and ends.</param>
public sealed record ChainSheet((string From, string To) FrontEnds, ValueList<ChainStop> Front, ValueList<ChainStop> Loop)
{
    public const string LoopFrom = "amp send";
    public const string LoopTo = "amp return";

    public static ChainSheet Of(RigProblem problem, Rig rig)
    {
        var numbers = RigNumbers.Of(rig);
        var reasons = ChainOrder.Reasons(problem, rig).DistinctBy(place => place.Device).ToDictionary(place => place.Device, place => place.Reason);
        return new(("instrument", problem.Amp is null ? "out" : "amp input"), Stops(rig.Chain.Front), Stops(rig.Chain.Loop));

        ValueList<ChainStop> Stops(ValueList<GearId> part) =>
            part.Select(id => new ChainStop(id, numbers.TryGetValue(id, out var number) ? number : null, problem.NameOf(id), reasons.GetValueOrDefault(id, ""))).ToValueList();
    }
}
