namespace GigRig.Web.Hosting;

/// <summary>What must be in order before the first request.</summary>
internal static class Preparation
{
    public static Task PrepareDataAsync(this WebApplication app)
    {
        var log = app.Services.GetRequiredService<ILoggerFactory>().CreateLogger("GigRig");
        app.Lifetime.ApplicationStarted.Register(() =>
            log.LogInformation("Fit for the Gig is ready on {Addresses}. Ctrl+C stops it.", string.Join(", ", app.Urls)));
        return Task.CompletedTask;
    }
}
