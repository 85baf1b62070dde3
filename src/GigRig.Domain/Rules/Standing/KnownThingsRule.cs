using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;

namespace GigRig.Domain.Rules.Standing;

internal sealed class KnownThingsRule : IRule
{
    public string Id => RuleIds.KnownThings;

    public string Sentence => "Every thing and every outlet in the rig is one of those on offer.";

    public IEnumerable<Violation> Check(RigProblem problem, Rig rig)
    {
        foreach (var id in rig.Placements.Select(p => p.Id).Where(id => problem.FindDevice(id) is null))
            yield return Unknown(id, "stands on the board but is not among the devices on offer");
        foreach (var id in rig.OffBoard.Where(id => problem.FindOffBoard(id) is null))
            yield return Unknown(id, "comes along but is not among the off-board things on offer");
        foreach (var id in rig.Chain.Front.Concat(rig.Chain.Loop).Where(id => problem.FindDevice(id) is null))
            yield return Unknown(id, "is in the chain but is not among the devices on offer");
        if (rig.Supply is { } supply && supply.Id != problem.Supply?.Id)
            yield return Unknown(supply.Id, "stands on the board as the supply but is not the supply on offer");
        foreach (var feed in rig.HookUp)
        {
            if (problem.FindDevice(feed.Device) is null)
                yield return Unknown(feed.Device, "is hooked up but is not among the devices on offer");
            foreach (var outlet in feed.Outlets.Where(outlet => problem.FindOutlet(outlet) is null))
                yield return new(Id, [feed.Device], "", $"{feed.Device} is hooked up to outlet {outlet}, which the supply does not have.");
        }
    }

    private Violation Unknown(GearId id, string how) => new(Id, [id], "", $"{id} {how}.");
}
