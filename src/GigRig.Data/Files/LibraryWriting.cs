using System.Globalization;
using GigRig.Domain;
using GigRig.Domain.Documents;
using GigRig.Domain.Documents.Problem;
using GigRig.Domain.Gear;

namespace GigRig.Data.Files;

/// <summary>Turns the content of a library into its document. What is empty is left out.</summary>
internal static class LibraryWriting
{
    public const string TimeFormat = "yyyy-MM-dd'T'HH:mm:ss.FFFFFFF'Z'";

    public static LibraryDocument Of(LibraryContent content) => new()
    {
        Format = LibraryDocument.FormatWord,
        Devices = Things(content.Devices, DeviceDocument.Of),
        Boards = Things(content.Boards, BoardDocument.Of),
        Supplies = Things(content.Supplies, SupplyDocument.Of),
        Amps = Things(content.Amps, AmpDocument.Of),
        OffBoard = Things(content.OffBoard, OffBoardDocument.Of),
        Leads = Things(content.Leads, LeadDocument.Of),
        Instruments = Things(content.Instruments, InstrumentDocument.Of),
        Adapters = content.Adapters is { } adapters ? AdaptersDocument.Of(adapters) : null,
        // Even where it is empty: to be left out means that the file does not say.
        Ownership = !content.SaysOwnership ? null :
        [
            .. Owned(content.Devices),
            .. Owned(content.Boards),
            .. Owned(content.Supplies),
            .. Owned(content.Amps),
            .. Owned(content.OffBoard),
            .. Owned(content.Leads),
            .. Owned(content.Instruments),
        ],
        Roles = OrNothing([.. content.Roles.Select(OwnRoleDocument.Of)]),
        Events = OrNothing([.. content.Events.Select(kept => new KeptEventDocument { Id = kept.Id.ToString("d"), Event = EventDocument.Of(kept.Item) })]),
        Rigs = OrNothing([.. content.Rigs.Select(Rig)]),
    };

    private static IReadOnlyList<TDocument>? Things<T, TDocument>(ValueList<Kept<OwnedGear<T>>> things, Func<T, TDocument> write)
        where T : class => OrNothing([.. things.Select(kept => write(kept.Item.Thing))]);

    private static IEnumerable<OwnershipDocument> Owned<T>(ValueList<Kept<OwnedGear<T>>> things)
        where T : class => things.Where(kept => kept.Item.Ownership != new Ownership()).Select(kept => OwnershipDocument.Of(kept.Id, kept.Item.Ownership));

    private static KeptRigDocument Rig(Kept<SavedRig> kept) => new()
    {
        Id = kept.Id.ToString("d"),
        Name = kept.Item.Name,
        Note = kept.Item.Note,
        SavedUtc = kept.Item.SavedUtc.ToString(TimeFormat, CultureInfo.InvariantCulture),
        Problem = RigProblemDocument.Of(kept.Item.Problem.Draft),
        Rig = RigDocument.Of(kept.Item.Rig),
    };

    private static IReadOnlyList<T>? OrNothing<T>(IReadOnlyList<T> items) => items.Count == 0 ? null : items;
}
