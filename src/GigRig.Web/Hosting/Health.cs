using Microsoft.AspNetCore.Diagnostics.HealthChecks;

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
