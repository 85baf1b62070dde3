using GigRig.Domain.Documents;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;

namespace GigRig.Data.Checks;

/// <summary>Whether something may be stored, by a page or from a file. The paths of the complaints start at the thing. Gear of a problem: <see cref="ProblemParts"/>.</summary>
internal static class StoreChecks
{
    // A rig may break rules: its owner moves things about. But it must speak of nothing that is not in its problem, or it could not be drawn.
    private static readonly IRule[] RigRules = [.. RuleBook.Rules.Where(rule => rule.Id is RuleIds.KnownThings or RuleIds.OnceEach)];

    public static IEnumerable<Complaint> Of(Ownership ownership) => OwnershipChecks.Of(ownership);

    public static IEnumerable<Complaint> Of(OwnRole role) =>
    [
        .. PlainChecks.RoleKey("/key", role.Role.Key),
        .. PlainChecks.Name("/title", "title", role.Title),
    ];

    public static IEnumerable<Complaint> Of(SavedRig rig) =>
    [
        .. PlainChecks.Name("/name", "name", rig.Name),
        .. PlainChecks.Note("/note", rig.Note),
        .. RigJson.Read(RigJson.Write(rig.Rig)) is RigCheck.Refused refused ? refused.Complaints.Select(complaint => complaint with { Path = "/rig" + complaint.Path }) : [],
        .. from rule in RigRules
           from broken in rule.Check(rig.Problem, rig.Rig)
           select new Complaint("/rig", broken.Amount, rule.Sentence, broken.Sentence.ToString()),
    ];
}
