using GigRig.Web.Queue;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Extensions.DependencyInjection;

namespace GigRig.Web.Tests.Hosting;

/// <summary>The real app, in this process, on a data folder of its own.</summary>
public sealed class TestApp : WebApplicationFactory<Program>
{
    private readonly DirectoryInfo data = Directory.CreateTempSubdirectory("gigrig-web-");

    public string DataFolder => data.FullName;

    /// <summary>Stands in for the planner where a test needs a slow one.</summary>
    internal AskPlanner? Ask { get; init; }

    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        builder.UseSetting("GIGRIG_DATA", data.FullName);
        if (Ask is not null)
            builder.ConfigureTestServices(services => services.AddSingleton(Ask));
    }

    protected override void Dispose(bool disposing)
    {
        base.Dispose(disposing);
        if (disposing && data.Exists)
            data.Delete(recursive: true);
    }
}
