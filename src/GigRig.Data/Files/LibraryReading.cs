using GigRig.Data.Checks;
using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;

namespace GigRig.Data.Files;

/// <summary>Turns the document of a library into its content, and complains of every value that could not be stored.</summary>
internal sealed class LibraryReading
{
    /// <summary>Of one kind. Checking more would take longer than anybody waits.</summary>
    public const int MostOfAKind = 5000;

    private readonly ComplaintList complaints;
    private readonly IdList ids;
    private readonly Dictionary<Guid, (string Place, Ownership Ownership)> ownership = [];

    private LibraryReading(ComplaintList complaints) => (this.complaints, ids) = (complaints, new IdList(complaints));

    public static LibraryContent Read(LibraryDocument document, ComplaintList complaints) => new LibraryReading(complaints).Read(document);

    private LibraryContent Read(LibraryDocument document)
    {
        ReadOwnership(document.Ownership);
        var kept = new KeptReading(complaints, ids);
        var content = new LibraryContent
        {
            Devices = Gear("/devices", document.Devices, item => item.Id, item => item.ToDevice(), ProblemParts.Of),
            Boards = Gear("/boards", document.Boards, item => item.Id, item => item.ToBoard(), ProblemParts.Of),
            Supplies = Gear("/supplies", document.Supplies, item => item.Id, item => item.ToSupply(), ProblemParts.Of),
            Amps = Gear("/amps", document.Amps, item => item.Id, item => item.ToAmp(), ProblemParts.Of),
            OffBoard = Gear("/offBoard", document.OffBoard, item => item.Id, item => item.ToItem(), ProblemParts.Of),
            Leads = Gear("/leads", document.Leads, item => item.Id, item => item.ToLead(), ProblemParts.Of),
            Instruments = Gear("/instruments", document.Instruments, item => item.Id, item => item.ToInstrument(), ProblemParts.Of),
            SaysOwnership = document.Ownership is not null,
            Adapters = Adapters(document.Adapters?.ToAdapters()),
            Roles = complaints.Each("/roles", document.Roles, kept.Role),
            Events = complaints.Each("/events", document.Events, kept.Event),
            Rigs = complaints.Each("/rigs", document.Rigs, kept.Rig),
        };
        foreach (var (id, (place, _)) in ownership)
            complaints.Add(place + "/id", $"{id}", "the id of a thing in this file", $"{place}/id is {id}, but nothing in this file has that id. Take it out, or add the thing.");
        return content;
    }

    private void ReadOwnership(IReadOnlyList<OwnershipDocument>? documents)
    {
        var owned = new IdList(complaints);
        complaints.Each("/ownership", documents, (place, item) =>
        {
            var own = item.ToOwnership();
            complaints.AddAt(place, StoreChecks.Of(own));
            if (!item.HasReadableDay)
                complaints.Add(place + "/backOn", item.BackOn!, "a day", $"{place}/backOn is \"{item.BackOn}\", but must be a day such as 2027-03-06.");
            if (owned.Take(place, item.Id) is { } id)
                ownership.Add(id, (place, own));
            return own;
        });
    }

    private ValueList<Kept<OwnedGear<T>>> Gear<TDocument, T>(
        string member, IReadOnlyList<TDocument>? documents, Func<TDocument, string?> idOf, Func<TDocument, T> read, Func<T, IEnumerable<Complaint>> check)
        where T : class => complaints.Each(member, documents, (place, item) =>
        {
            if (ids.Take(place, idOf(item)) is not { } id)
                return null;
            var thing = read(item);
            complaints.AddAt(place, check(thing));
            return new Kept<OwnedGear<T>>(id, new(thing, ownership.Remove(id, out var own) ? own.Ownership : new Ownership()));
        });

    private PowerAdapters? Adapters(PowerAdapters? adapters)
    {
        if (adapters is not null)
            complaints.AddAt("/adapters", ProblemParts.Of(adapters));
        return adapters;
    }
}
