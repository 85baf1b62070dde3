using GigRig.Data;
using GigRig.Web.Handouts;
using GigRig.Web.Shared;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.Net.Http.Headers;

namespace GigRig.Web.Features.Rigs;

/// <summary>A rig as one file with everything in it, to send when the app can't be reached from outside: the page a link would show, for the owner to keep.</summary>
internal static class RigCopyEndpoint
{
    public static void MapRigCopy(this IEndpointRouteBuilder routes) => routes.MapGet(GigRigUrls.RigCopyRoute, AnswerAsync).ExcludeFromDescription();

    private static async Task<Results<RazorComponentResult<HandoutDocument>, NotFound>> AnswerAsync(
        Guid id, bool? notes, bool? values, bool? places, int? version, ShareLinkStore links, IWebHostEnvironment host, HttpRequest request, HttpResponse response, CancellationToken cancel)
    {
        var content = new LinkContent(notes ?? false, values ?? false, places ?? false, UnitPreference.Read(request.Cookies));
        if (await links.ShowAsync(id, content, version, cancel) is not { } rig)
            return TypedResults.NotFound();
        var name = new ContentDispositionHeaderValue("attachment");
        name.SetHttpFileName(FileNameOf(rig.Name));
        response.Headers.ContentDisposition = name.ToString();
        response.Headers.CacheControl = "no-store";
        return new RazorComponentResult<HandoutDocument>(new Dictionary<string, object?>
        {
            [nameof(HandoutDocument.Rig)] = rig,
            [nameof(HandoutDocument.Styles)] = await HandoutStyles.ReadAsync(host.WebRootFileProvider, cancel),
        });
    }

    /// <summary>What every file system takes.</summary>
    private static string FileNameOf(string name)
    {
        var kept = string.Join('-', string.Concat(name.Select(c => char.IsLetterOrDigit(c) ? c : ' ')).Split(' ', StringSplitOptions.RemoveEmptyEntries));
        return $"{(kept.Length is 0 or > 80 ? "rig" : kept)}.html";
    }
}
