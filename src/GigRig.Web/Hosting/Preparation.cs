using GigRig.Data;
using Microsoft.AspNetCore.DataProtection;

namespace GigRig.Web.Hosting;

/// <summary>What must be in order before the first request.</summary>
internal static class Preparation
{
    public static async Task PrepareDataAsync(this WebApplication app)
    {
        await DatabaseStart.RunAsync(app.Services);
        PageKeys.Require(app.Services.GetRequiredService<IDataProtectionProvider>(), DataFolder.Of(app.Configuration));

        var log = app.Services.GetRequiredService<ILoggerFactory>().CreateLogger("GigRig");
        app.Lifetime.ApplicationStarted.Register(() => log.LogInformation(
            "Fit for the Gig is ready on {Addresses}, with the library in {Folder}. Ctrl+C stops it.",
            string.Join(", ", app.Urls),
            DataFolder.Of(app.Configuration)));
    }
}
