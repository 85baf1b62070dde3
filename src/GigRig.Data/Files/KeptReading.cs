using System.Globalization;
using System.Text.Json;
using GigRig.Data.Checks;
using GigRig.Domain.Documents;
using GigRig.Domain.Events;
using GigRig.Domain.Rigs;

namespace GigRig.Data.Files;

/// <summary>Reads what is in a library file beside the gear: own roles, event types, saved rigs.</summary>
/// <param name="ids">Of the gear, which no event type and no rig may have.</param>
internal sealed class KeptReading(ComplaintList complaints, IdList ids)
{
    private readonly Dictionary<string, string> roleKeys = new(StringComparer.Ordinal);

    public OwnRole? Role(string place, OwnRoleDocument document)
    {
        var role = document.ToRole();
        complaints.AddAt(place, StoreChecks.Of(role));
        if (roleKeys.TryAdd(document.Key, place))
            return role;
        complaints.Add(place + "/key", document.Key, "a key of its own", $"{place}/key is \"{document.Key}\", which is the key of {roleKeys[document.Key]} already. Keep one of them.");
        return null;
    }

    public Kept<EventType>? Event(string place, KeptEventDocument document)
    {
        var eventType = document.Event.ToEvent();
        complaints.AddAt(place + "/event", ProblemParts.Of(eventType));
        return ids.Take(place, document.Id) is { } id ? new(id, eventType) : null;
    }

    public Kept<SavedRig>? Rig(string place, KeptRigDocument document)
    {
        var id = ids.Take(place, document.Id);
        var saved = Time(place + "/savedUtc", document.SavedUtc);
        // Once more as texts of their own: the readers of both know everything that can be wrong with them.
        var problem = Problem(place + "/problem", RigProblemJson.Read(JsonSerializer.Serialize(document.Problem, DocumentJson.Compact)));
        var rig = Rig(place + "/rig", RigJson.Read(JsonSerializer.Serialize(document.Rig, DocumentJson.Compact)));
        if (id is null || saved is null || problem is null || rig is null)
            return null;
        var item = new SavedRig(document.Name, document.Note, problem, rig, saved.Value);
        complaints.AddAt(place, StoreChecks.Of(item));
        return new(id.Value, item);
    }

    private RigProblem? Problem(string place, ProblemCheck check)
    {
        if (check is ProblemCheck.Refused refused)
            complaints.AddAt(place, refused.Complaints);
        return (check as ProblemCheck.Accepted)?.Problem;
    }

    private Rig? Rig(string place, RigCheck check)
    {
        if (check is RigCheck.Refused refused)
            complaints.AddAt(place, refused.Complaints);
        return (check as RigCheck.Accepted)?.Rig;
    }

    private DateTime? Time(string path, string text)
    {
        if (DateTime.TryParseExact(
            text, LibraryWriting.TimeFormat, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal | DateTimeStyles.AdjustToUniversal, out var time))
            return time;
        complaints.Add(path, text, "a time in UTC", $"{path} is \"{text}\", but must be a time in UTC such as 2027-03-06T20:15:00Z.");
        return null;
    }
}
