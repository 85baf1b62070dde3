namespace GigRig.Web.Features.Share;

/// <summary>Whoever knows the address of a shared rig can read it, so the address must not be kept or passed on by anything in between.</summary>
internal static class SharedPageHeaders
{
    public static void Set(HttpResponse response)
    {
        response.Headers.CacheControl = "no-store";
        response.Headers["X-Robots-Tag"] = "noindex, nofollow";
    }
}
