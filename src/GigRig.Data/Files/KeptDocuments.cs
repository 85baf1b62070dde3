using System.Text.Json.Serialization;
using GigRig.Domain.Documents;
using GigRig.Domain.Documents.Problem;
using GigRig.Domain.Gear;

namespace GigRig.Data.Files;

/// <summary>A role of the owner's own, known by its key.</summary>
internal sealed record OwnRoleDocument
{
    public required string Key { get; init; }

    public required string Title { get; init; }

    public static OwnRoleDocument Of(OwnRole role) => new() { Key = role.Role.Key, Title = role.Title };

    public OwnRole ToRole() => new(new Role(Key), Title);
}

internal sealed record KeptEventDocument
{
    public required string Id { get; init; }

    public required EventDocument Event { get; init; }
}

/// <summary>A saved rig with the problem it was made from.</summary>
internal sealed record KeptRigDocument
{
    public required string Id { get; init; }

    public required string Name { get; init; }

    public string Note { get; init; } = "";

    /// <summary>ISO 8601, UTC, such as <c>2027-03-06T20:15:00Z</c>.</summary>
    public required string SavedUtc { get; init; }

    [JsonConverter(typeof(OneLine<RigProblemDocument>))]
    public required RigProblemDocument Problem { get; init; }

    [JsonConverter(typeof(OneLine<RigDocument>))]
    public required RigDocument Rig { get; init; }
}
