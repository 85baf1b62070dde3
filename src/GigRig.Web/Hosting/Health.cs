using GigRig.Data;
using Microsoft.AspNetCore.Diagnostics.HealthChecks;
using Microsoft.Extensions.Diagnostics.HealthChecks;

namespace GigRig.Web.Hosting;

/// <summary>Two addresses for whoever watches over the process: <em>live</em> says it runs, <em>ready</em> that it can read its library.</summary>
internal static class Health
{
    public static void MapGigRigHealth(this WebApplication app)
    {
        app.MapHealthChecks(GigRigUrls.HealthLive, new HealthCheckOptions { Predicate = _ => false });
        app.MapHealthChecks(GigRigUrls.HealthReady);
    }
}

/// <summary>Reads the smallest list of the library.</summary>
internal sealed class LibraryCheck(EventTypeStore events) : IHealthCheck
{
    public async Task<HealthCheckResult> CheckHealthAsync(HealthCheckContext context, CancellationToken cancellationToken = default)
    {
        await events.AllAsync(cancellationToken);
        return HealthCheckResult.Healthy();
    }
}
