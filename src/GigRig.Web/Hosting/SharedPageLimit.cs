using System.Globalization;
using System.Net.Mime;
using System.Threading.RateLimiting;

namespace GigRig.Web.Hosting;

/// <summary>
/// How often shared pages may be asked for, by one visitor and by all together, whether the link is right or wrong. Tokens can't be guessed at any
/// rate; this keeps the trying from being a burden.
/// </summary>
internal static class SharedPageLimit
{
    /// <summary>A minute. A band behind one address of the venue opens a page and its picture each, and again.</summary>
    public const int ByOneVisitor = 120;

    /// <summary>A minute.</summary>
    public const int ByAll = 1200;

    private static readonly TimeSpan Window = TimeSpan.FromMinutes(1);

    public static IServiceCollection AddSharedPageLimit(this IServiceCollection services) => services.AddRateLimiter(options =>
    {
        options.GlobalLimiter = PartitionedRateLimiter.CreateChained(
            Limiter(context => context.Connection.RemoteIpAddress?.ToString() ?? "unknown", ByOneVisitor),
            Limiter(_ => "all", ByAll));
        options.OnRejected = RefuseAsync;
    });

    private static PartitionedRateLimiter<HttpContext> Limiter(Func<HttpContext, string> who, int most) => PartitionedRateLimiter.Create<HttpContext, string>(context =>
        GigRigUrls.IsShared(context.Request.Path)
            ? RateLimitPartition.GetFixedWindowLimiter(who(context), _ => new() { PermitLimit = most, Window = Window })
            : RateLimitPartition.GetNoLimiter("elsewhere"));

    private static async ValueTask RefuseAsync(Microsoft.AspNetCore.RateLimiting.OnRejectedContext refused, CancellationToken cancel)
    {
        var response = refused.HttpContext.Response;
        response.StatusCode = StatusCodes.Status429TooManyRequests;
        response.Headers.RetryAfter = ((int)Window.TotalSeconds).ToString(CultureInfo.InvariantCulture);
        response.ContentType = MediaTypeNames.Text.Plain;
        await response.WriteAsync("Too many shared pages were asked for. Wait a minute and try again.", cancel);
    }
}
