using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;

namespace GigRig.Web.Tests.Hosting;

/// <summary>The real app, in this process, on a data folder of its own.</summary>
public sealed class TestApp : WebApplicationFactory<Program>
{
    private readonly DirectoryInfo data = Directory.CreateTempSubdirectory("gigrig-web-");

    protected override void ConfigureWebHost(IWebHostBuilder builder) => builder.UseSetting("GIGRIG_DATA", data.FullName);

    protected override void Dispose(bool disposing)
    {
        base.Dispose(disposing);
        if (disposing && data.Exists)
            data.Delete(recursive: true);
    }
}
