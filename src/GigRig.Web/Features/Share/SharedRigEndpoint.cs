using GigRig.Data;
using Microsoft.AspNetCore.Http.HttpResults;

namespace GigRig.Web.Features.Share;

/// <summary>
/// Serves the page of a shared rig. An endpoint of its own instead of a routed page: those carry a cookie against forged forms and markers for
/// a circuit, and this page has no form, no circuit and no script.
/// </summary>
internal static class SharedRigEndpoint
{
    public static void MapSharedRig(this IEndpointRouteBuilder routes) => routes.MapGet(GigRigUrls.SharedRoute, AnswerAsync).ExcludeFromDescription();

    private static async Task<RazorComponentResult<SharedRigDocument>> AnswerAsync(string token, SharedRigReader reader, HttpResponse response, CancellationToken cancel)
    {
        // Whoever knows the address can read the rig, so nothing in between may keep it or pass it on.
        response.Headers.CacheControl = "no-store";
        response.Headers["X-Robots-Tag"] = "noindex, nofollow";
        var rig = await FindAsync(token, reader, cancel);
        return new(new Dictionary<string, object?> { [nameof(SharedRigDocument.Rig)] = rig })
        {
            StatusCode = rig is null ? StatusCodes.Status404NotFound : StatusCodes.Status200OK,
        };
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
