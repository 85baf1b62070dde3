using GigRig.Domain.Documents;
using GigRig.Domain.Documents.Problem;

namespace GigRig.Data.Files;

/// <summary>
/// A whole library as plain numbers and words: the <c>gig-library/1</c> document, see <c>docs/file-format.md</c>. Gear and events are written as in
/// a <c>rig-problem/1</c>; what the owner keeps beside the facts stands apart, so that it can be taken out before the file is handed on.
/// </summary>
internal sealed record LibraryDocument
{
    public const string FormatWord = "gig-library/1";

    public required string Format { get; init; }

    public IReadOnlyList<DeviceDocument>? Devices { get; init; }

    public IReadOnlyList<BoardDocument>? Boards { get; init; }

    public IReadOnlyList<SupplyDocument>? Supplies { get; init; }

    public IReadOnlyList<AmpDocument>? Amps { get; init; }

    public IReadOnlyList<OffBoardDocument>? OffBoard { get; init; }

    public IReadOnlyList<LeadDocument>? Leads { get; init; }

    public IReadOnlyList<InstrumentDocument>? Instruments { get; init; }

    public AdaptersDocument? Adapters { get; init; }

    /// <summary>For the things of which there is more to say than that they are ready.</summary>
    public IReadOnlyList<OwnershipDocument>? Ownership { get; init; }

    public IReadOnlyList<OwnRoleDocument>? Roles { get; init; }

    public IReadOnlyList<KeptEventDocument>? Events { get; init; }

    public IReadOnlyList<KeptRigDocument>? Rigs { get; init; }
}
