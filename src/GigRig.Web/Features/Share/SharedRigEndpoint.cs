using GigRig.Data;
using GigRig.Web.Drawing;
using GigRig.Web.Handouts;
using Microsoft.AspNetCore.Http.HttpResults;

namespace GigRig.Web.Features.Share;

/// <summary>
/// Serves the page of a shared rig and its picture. Endpoints of their own instead of a routed page: those carry a cookie against forged forms
/// and markers for a circuit, and this page has no form, no circuit and no script.
/// </summary>
internal static class SharedRigEndpoint
{
    // Whatever looks at an address before it shows it asks for the head alone.
    private static readonly string[] Reads = [HttpMethods.Get, HttpMethods.Head];

    public static void MapSharedRig(this IEndpointRouteBuilder routes)
    {
        routes.MapMethods(GigRigUrls.SharedRoute, Reads, PageAsync).ExcludeFromDescription();
        routes.MapMethods(GigRigUrls.SharedPictureRoute, Reads, PictureAsync).ExcludeFromDescription();
        routes.MapMethods(GigRigUrls.SharedOtherwise, Reads, () => Page(null, null)).ExcludeFromDescription();
    }

    private static async Task<RazorComponentResult<HandoutDocument>> PageAsync(string token, SharedRigReader reader, HttpRequest request, CancellationToken cancel)
    {
        var rig = await FindAsync(token, reader, cancel);
        // Previews ask for it on their own and need the whole address.
        return Page(rig, rig is null ? null : $"{request.Scheme}://{request.Host}{GigRigUrls.SharedPicture(token)}");
    }

    private static RazorComponentResult<HandoutDocument> Page(SharedRig? rig, string? picture) =>
        new(new Dictionary<string, object?> { [nameof(HandoutDocument.Rig)] = rig, [nameof(HandoutDocument.PictureUrl)] = picture })
        {
            StatusCode = rig is null ? StatusCodes.Status404NotFound : StatusCodes.Status200OK,
        };

    private static async Task<Results<FileContentHttpResult, NotFound>> PictureAsync(string token, SharedRigReader reader, HttpResponse response, CancellationToken cancel)
    {
        if (await FindAsync(token, reader, cancel) is not { } rig)
            return TypedResults.NotFound();
        // A chat may keep it for its reader, but asks each time.
        response.Headers.CacheControl = "private, no-cache";
        return TypedResults.File(ScenePicture.Png(BoardSceneMapper.Map(rig.Problem, rig.Rig, PictureWidth.Narrow, rig.Unit)), "image/png");
    }

    /// <summary>A rig that can't be read any more is the owner's trouble; to a visitor it is no rig.</summary>
    private static async Task<SharedRig?> FindAsync(string token, SharedRigReader reader, CancellationToken cancel)
    {
        try
        {
            return await reader.FindAsync(token, cancel);
        }
        catch (UnreadableRigException)
        {
            return null;
        }
    }
}
