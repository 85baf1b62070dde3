namespace GigRig.Web.Features.Start;

internal static class StartServices
{
    /// <summary>A page's state lives and dies with the page.</summary>
    public static IServiceCollection AddStartPage(this IServiceCollection services) => services
        .AddSingleton<DemoLibrary>()
        .AddTransient<StartPageState>();
}
