using System.Globalization;
using GigRig.Data;
using GigRig.Web.Api;
using GigRig.Web.Features.Events;
using GigRig.Web.Features.Gear;
using GigRig.Web.Features.Gear.Photo;
using GigRig.Web.Features.ImportExport;
using GigRig.Web.Features.Plan;
using GigRig.Web.Features.Rigs;
using GigRig.Web.Features.Share;
using GigRig.Web.Features.Start;
using GigRig.Web.Features.Workbench;
using GigRig.Web.Guesses;
using GigRig.Web.Queue;
using GigRig.Web.Shared.Drafts;
using MudBlazor;
using MudBlazor.Services;

namespace GigRig.Web.Hosting;

/// <summary>Puts the app together: what it is made of, what happens to a request, and what must be in order before the first one.</summary>
internal static class HostingExtensions
{
    public static void AddGigRig(this WebApplicationBuilder builder)
    {
        ListenPolicy.Apply(builder);
        // Lets the built, unpublished app serve its packages' files in every environment; a published one has them in its own web root.
        builder.WebHost.UseStaticWebAssets();
        builder.WebHost.ConfigureKestrel(server => server.AddServerHeader = false);
        QuietLog(builder.Logging);
        CultureInfo.DefaultThreadCurrentCulture = CultureInfo.DefaultThreadCurrentUICulture = CultureInfo.GetCultureInfo("en-GB");

        var folder = DataFolder.Of(builder.Configuration);
        var services = builder.Services;
        services.AddPageKeys(folder);
        services.AddGigRigData(folder);
        services.AddRazorComponents().AddInteractiveServerComponents();
        // Below what is worked on, not over the buttons at the top.
        services.AddMudServices(mud => mud.SnackbarConfiguration.PositionClass = Defaults.Classes.Position.BottomRight);
        services.AddScoped<BrowserDrafts>();
        services.AddPlanQueue();
        services.AddStartPage().AddGearPages().AddEventPages().AddPlanPage().AddRigPages().AddWorkbench().AddLibraryPage();
        services.AddGuesses();
        services.AddSharedPageLimit();
        services.AddPlanApi();
        services.AddProblemDetails();
        services.AddHealthChecks().AddCheck<LibraryCheck>("library");
    }

    public static void UseGigRig(this WebApplication app)
    {
        app.UseExceptionHandler(GigRigUrls.Error, createScopeForErrors: true);
        app.UseSecurityHeaders();
        app.UseApiFailures();
        app.UseOwnOriginOnly();
        app.UseWhen(
            // A shared address must not lead into the app, not even by a page that says there is nothing.
            context => !GigRigUrls.IsApi(context.Request.Path) && !GigRigUrls.IsShared(context.Request.Path),
            pages => pages.UseStatusCodePagesWithReExecute(GigRigUrls.NotFound, createScopeForStatusCodePages: true));
        app.UseRouting();
        app.UseRateLimiter();
        app.UseAntiforgery();
        app.MapStaticAssets();
        app.MapGigRigHealth();
        app.MapLibraryFile();
        app.MapGearPhoto();
        app.MapRigCopy();
        app.MapSharedRig();
        app.MapPlanApi();
        app.MapOpenApi(GigRigUrls.OpenApi);
        // The frame policy is part of our own header; a second one here would only repeat it.
        app.MapRazorComponents<App>().AddInteractiveServerRenderMode(options => options.ContentSecurityFrameAncestorsPolicy = null);
    }

    private static void QuietLog(ILoggingBuilder logging)
    {
        logging.AddFilter("Microsoft", LogLevel.Warning);
        // A failed start is explained in plain words by Program; the keys lie in the owner's own folder and need no second lock.
        logging.AddFilter("Microsoft.Extensions.Hosting.Internal.Host", LogLevel.None);
        logging.AddFilter("Microsoft.AspNetCore.DataProtection", LogLevel.Error);
    }
}
