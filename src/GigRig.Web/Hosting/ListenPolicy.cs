using System.Net;

namespace GigRig.Web.Hosting;

/// <summary>
/// Where the app may listen. There is no login yet: whoever reaches the port can read and change the whole library, so anything but this
/// computer's own addresses is refused unless the owner says so in <see cref="AllowPublicKey"/>.
/// </summary>
internal static class ListenPolicy
{
    public const string AllowPublicKey = "GIGRIG_ALLOW_PUBLIC";
    public const string DefaultAddress = "http://localhost:5080";

    public static void Apply(WebApplicationBuilder builder)
    {
        var addresses = Configured(builder.Configuration).ToList();
        if (addresses.Count == 0)
            builder.WebHost.UseUrls(DefaultAddress);
        if (addresses.Find(address => !IsAddress(address)) is { } senseless)
            throw new StartRefusedException($"Not started: \"{senseless}\" is no address to listen on. Give one such as {DefaultAddress}: http or https, a host, and a port from 1 to 65535.");
        if (IsPublicAllowed(builder.Configuration))
            return;
        if (addresses.Find(address => !IsLoopback(address)) is { } open)
            throw new StartRefusedException(Refusal(open));
        // Without this a page on another site could point its own host name at 127.0.0.1 and read the library through the visitor's browser.
        builder.Configuration["AllowedHosts"] = "localhost;127.0.0.1;[::1]";
    }

    public static bool IsPublicAllowed(IConfiguration configuration) => configuration[AllowPublicKey] == "1";

    /// <summary>All addresses asked for, from every place the web server takes them from.</summary>
    public static IEnumerable<string> Configured(IConfiguration configuration)
    {
        var urls = Split(configuration["urls"]).ToList();
        var ports = Split(configuration["http_ports"]).Select(port => $"http://*:{port}")
            .Concat(Split(configuration["https_ports"]).Select(port => $"https://*:{port}"));
        var endpoints = configuration.GetSection("Kestrel:Endpoints").GetChildren().Select(endpoint => endpoint["Url"]).OfType<string>();
        return (urls.Count > 0 ? urls : ports).Concat(endpoints);
    }

    public static bool IsLoopback(string address)
    {
        var host = BindingAddress.Parse(address).Host;
        return host.Equals("localhost", StringComparison.OrdinalIgnoreCase)
            || (IPAddress.TryParse(host.Trim('[', ']'), out var ip) && IPAddress.IsLoopback(ip));
    }

    /// <summary>Whether the web server will take it, which otherwise ends the start with a stack trace.</summary>
    private static bool IsAddress(string address)
    {
        try
        {
            var parsed = BindingAddress.Parse(address);
            // Only a numbered address may leave the port to the system.
            var least = IPAddress.TryParse(parsed.Host.Trim('[', ']'), out _) ? 0 : 1;
            return parsed.Scheme is "http" or "https" && parsed.PathBase.Length == 0 && parsed.Port >= least && parsed.Port <= IPEndPoint.MaxPort;
        }
        catch (Exception fault) when (fault is FormatException or InvalidOperationException)
        {
            return false;
        }
    }

    private static string[] Split(string? list) => (list ?? "").Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);

    private static string Refusal(string address) =>
        $"""
        Not started: {address} can be reached from other computers.
        This app has no login yet, so everyone who reaches it can read and change your library.
        Leave the address out to listen on {DefaultAddress}, for this computer alone,
        or set {AllowPublicKey}=1 if you trust everyone on that network.
        """;
}
