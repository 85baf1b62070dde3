using GigRig.Data;
using Microsoft.AspNetCore.Http.HttpResults;

namespace GigRig.Web.Features.Gear.Photo;

/// <summary>Serves the photo of a thing to its owner. No other page shows one.</summary>
internal static class PhotoEndpoint
{
    public static void MapGearPhoto(this IEndpointRouteBuilder routes) => routes.MapGet(GigRigUrls.GearPhotoRoute, AnswerAsync).ExcludeFromDescription();

    private static async Task<Results<FileContentHttpResult, NotFound>> AnswerAsync(Guid id, GearPhotoStore photos, HttpResponse response, CancellationToken cancel)
    {
        response.Headers["Cross-Origin-Resource-Policy"] = "same-origin";
        if (await photos.FindAsync(id, cancel) is not { } photo)
        {
            response.Headers.CacheControl = "no-store";
            return TypedResults.NotFound();
        }

        // The address changes with the photo, so the browser may keep it; nobody in between may.
        response.Headers.CacheControl = "private, max-age=31536000, immutable";
        return TypedResults.Bytes(photo.Content, photo.ContentType);
    }
}
