namespace GigRig.Data.Files;

/// <summary>Ids that must be different from one another.</summary>
internal sealed class IdList(ComplaintList complaints)
{
    private readonly Dictionary<Guid, string> places = [];

    /// <summary>Null, with a complaint, where it is missing, is no GUID, or was there already.</summary>
    public Guid? Take(string place, string? text)
    {
        var path = place + "/id";
        if (text is null)
            complaints.Add(path, "nothing", "a GUID", $"{path} is missing. Add one: it keeps the thing known when the file is imported again.");
        else if (!Guid.TryParseExact(text, "d", out var id))
            complaints.Add(path, text, "a GUID", $"{path} is \"{Short(text)}\", but must be a GUID such as 018f6f0e-8d3c-7a10-9c55-2f3b6a1d4e77.");
        else if (!places.TryAdd(id, place))
            complaints.Add(path, text, "an id of its own", $"{path} is {text}, which is the id of {places[id]} already. Give one of them another id.");
        else
            return id;
        return null;
    }

    private static string Short(string text) => text.Length <= 40 ? text : text[..40] + "…";
}
