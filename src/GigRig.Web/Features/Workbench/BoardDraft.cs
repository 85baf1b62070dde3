using System.Text.Json;
using System.Text.Json.Serialization;
using GigRig.Domain;
using GigRig.Domain.Documents;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;

namespace GigRig.Web.Features.Workbench;

/// <summary>What the browser keeps of a rig that was moved about and not saved. Read back, it is input like any other.</summary>
/// <param name="Version">Of the stored rig the work began with.</param>
/// <param name="Rig">A <c>rig/1</c> text.</param>
/// <param name="Aside">Where the devices laid aside had stood: id, x, y, degrees.</param>
internal sealed record BoardDraft(int Version, string Rig, string[] Locked, AsideDraft[] Aside)
{
    public static string Write(int version, BoardEdit edit) => JsonSerializer.Serialize(new BoardDraft(
        version,
        RigJson.Write(edit.Rig),
        [.. edit.Locked.Select(id => id.Value)],
        [.. edit.Aside.Select(place => new AsideDraft(place.Id.Value, place.At.X.Value, place.At.Y.Value, (int)place.Turn))]));

    /// <summary>Null where the text is not a draft, or one of another release of the app.</summary>
    public static (int Version, BoardEdit Edit)? Read(string text)
    {
        try
        {
            return JsonSerializer.Deserialize<BoardDraft>(text, Strict) is { } draft && RigJson.Read(draft.Rig) is RigCheck.Accepted { Rig: var rig }
                ? (draft.Version, new(rig, draft.Locked.Select(id => new GearId(id)).ToValueList(), draft.Aside.Select(aside => aside.ToPlacement()).ToValueList()))
                : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }

    private static readonly JsonSerializerOptions Strict = new() { RespectNullableAnnotations = true, RespectRequiredConstructorParameters = true, UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow };
}

/// <summary>Where a device had stood before it was laid aside.</summary>
internal sealed record AsideDraft(string Id, int X, int Y, int Turn)
{
    public Placement ToPlacement() => new(new(Id), new(X.Mm, Y.Mm), (Turn)Turn);
}
