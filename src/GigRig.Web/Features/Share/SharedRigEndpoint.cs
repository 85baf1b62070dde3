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
    private const string Unlisted = "noindex, nofollow";

    public static void MapSharedRig(this IEndpointRouteBuilder routes)
    {
        routes.MapGet(GigRigUrls.SharedRoute, PageAsync).ExcludeFromDescription();
        routes.MapGet(GigRigUrls.SharedPictureRoute, PictureAsync).ExcludeFromDescription();
    }

    private static async Task<RazorComponentResult<HandoutDocument>> PageAsync(string token, SharedRigReader reader, HttpRequest request, HttpResponse response, CancellationToken cancel)
    {
        // Whoever knows the address can read the rig, so nothing in between may keep it or pass it on.
        response.Headers.CacheControl = "no-store";
        response.Headers["X-Robots-Tag"] = Unlisted;
        var rig = await FindAsync(token, reader, cancel);
        var parameters = new Dictionary<string, object?> { [nameof(HandoutDocument.Rig)] = rig };
        // Previews ask for it on their own and need the whole address.
        if (rig is not null)
            parameters[nameof(HandoutDocument.PictureUrl)] = $"{request.Scheme}://{request.Host}{GigRigUrls.SharedPicture(token)}";
        return new(parameters) { StatusCode = rig is null ? StatusCodes.Status404NotFound : StatusCodes.Status200OK };
    }

    private static async Task<Results<FileContentHttpResult, NotFound>> PictureAsync(string token, SharedRigReader reader, HttpResponse response, CancellationToken cancel)
    {
        response.Headers.CacheControl = "private, no-cache";
        response.Headers["X-Robots-Tag"] = Unlisted;
        return await FindAsync(token, reader, cancel) is { } rig
            ? TypedResults.File(ScenePicture.Png(BoardSceneMapper.Map(rig.Problem, rig.Rig, PictureWidth.Narrow, rig.Unit)), "image/png")
            : TypedResults.NotFound();
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
