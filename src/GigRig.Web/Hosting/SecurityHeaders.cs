namespace GigRig.Web.Hosting;

/// <summary>Headers that limit what a page may load and who may frame it.</summary>
internal static class SecurityHeaders
{
    // MudBlazor writes its theme as inline style elements, so styles cannot be limited to files. Scripts can: no page has an inline one.
    private const string AppPolicy =
        "default-src 'self'; script-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data:; font-src 'self'; connect-src 'self'; "
        + "object-src 'none'; base-uri 'self'; form-action 'self'; frame-ancestors 'none'";

    // A shared page is read by strangers and needs neither script nor connection. Drawings carry their numbers as attributes, not as styles.
    private const string SharedPolicy =
        "default-src 'none'; style-src 'self'; img-src 'self'; base-uri 'self'; form-action 'none'; frame-ancestors 'none'";

    public static IApplicationBuilder UseSecurityHeaders(this IApplicationBuilder app) => app.Use((context, next) =>
    {
        var shared = GigRigUrls.IsShared(context.Request.Path);
        var headers = context.Response.Headers;
        headers.ContentSecurityPolicy = shared ? SharedPolicy : AppPolicy;
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = shared ? "no-referrer" : "strict-origin-when-cross-origin";
        headers["Permissions-Policy"] = "camera=(), geolocation=(), microphone=(), payment=(), usb=()";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        if (shared)
        {
            // Whoever knows the address can read the rig, so nothing in between may keep it or list it, whatever the answer is.
            headers.CacheControl = "no-store";
            headers["X-Robots-Tag"] = "noindex, nofollow";
        }

        return next();
    });

    /// <summary>
    /// Browsers let any site open a socket or send a form here. Both carry the sender's origin: what would change something and comes from
    /// another origin is turned away.
    /// </summary>
    public static IApplicationBuilder UseOwnOriginOnly(this IApplicationBuilder app) => app.Use((context, next) =>
    {
        var request = context.Request;
        var reads = HttpMethods.IsGet(request.Method) || HttpMethods.IsHead(request.Method);
        var guarded = !reads || request.Path.StartsWithSegments("/_blazor");
        if (!guarded || request.Headers.Origin.ToString() is not { Length: > 0 } origin || origin == $"{request.Scheme}://{request.Host}")
            return next();
        context.Response.StatusCode = StatusCodes.Status403Forbidden;
        return context.Response.WriteAsync($"Refused: the request comes from {origin}, not from this app.");
    });
}
