using System.Globalization;
using System.Net.Mime;
using System.Text;
using GigRig.Data;
using GigRig.Data.Files;

namespace GigRig.Web.Features.ImportExport;

internal static class LibraryServices
{
    /// <summary>A page's state lives and dies with the page.</summary>
    public static IServiceCollection AddLibraryPage(this IServiceCollection services) => services.AddTransient<LibraryPageState>();

    /// <summary>The whole library as a file to keep.</summary>
    public static void MapLibraryFile(this IEndpointRouteBuilder app) =>
        app.MapGet(GigRigUrls.LibraryFile, async (HttpResponse response, LibraryFile file, TimeProvider time, CancellationToken cancel) =>
        {
            response.Headers.CacheControl = "no-store";
            var day = time.GetLocalNow().ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
            try
            {
                return Results.File(Encoding.UTF8.GetBytes(await file.ExportAsync(cancel)), MediaTypeNames.Application.Json, $"gig-library-{day}.json");
            }
            catch (Exception incomplete) when (incomplete is UnreadableRigException or LibraryTooLargeException)
            {
                return Results.Text($"No file was made. {incomplete.Message}", statusCode: StatusCodes.Status409Conflict);
            }
        }).ExcludeFromDescription();
}
