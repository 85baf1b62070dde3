using GigRig.Domain.Documents;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;

namespace GigRig.Data.Checks;

/// <summary>Whether something may be stored, by a page or from a file. The paths of the complaints start at the thing. Gear of a problem: <see cref="ProblemParts"/>.</summary>
internal static class StoreChecks
{
    private const int MostCents = 1_000_000_000;
    private const int MostLeads = 999;

    /// <summary>A hundred metres.</summary>
    private const int MostLeadLength = 100_000;

    // A rig may break rules: its owner moves things about. But it must speak of nothing that is not in its problem, or it could not be drawn.
    private static readonly IRule[] RigRules = [.. RuleBook.Rules.Where(rule => rule.Id is RuleIds.KnownThings or RuleIds.OnceEach)];

    public static IEnumerable<Complaint> Of(Lead lead) =>
    [
        .. PlainChecks.Name("/name", "name", lead.Name),
        .. PlainChecks.Word("/kind", "kind", lead.Kind),
        .. PlainChecks.Within("/length", "length", lead.Length.Value, 1, MostLeadLength, " mm"),
        .. PlainChecks.Word("/firstPlug", "first plug", lead.FirstPlug),
        .. PlainChecks.Word("/secondPlug", "second plug", lead.SecondPlug),
        .. PlainChecks.Within("/count", "count", lead.Count, 1, MostLeads),
    ];

    public static IEnumerable<Complaint> Of(Instrument instrument) =>
    [
        .. PlainChecks.Name("/name", "name", instrument.Name),
        .. PlainChecks.Name("/kind", "kind", instrument.Kind),
    ];

    public static IEnumerable<Complaint> Of(Ownership ownership) =>
    [
        .. PlainChecks.Word("/status", "status", ownership.Status),
        .. PlainChecks.Note("/note", ownership.Note),
        .. ownership.ValueCents is { } cents ? PlainChecks.Within("/valueCents", "value in hundredths", cents, 0, MostCents) : [],
    ];

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
           select new Complaint("/rig", broken.Amount, rule.Sentence, broken.Sentence),
    ];
}
