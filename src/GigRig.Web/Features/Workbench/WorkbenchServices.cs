using GigRig.Domain;

namespace GigRig.Web.Features.Workbench;

internal static class WorkbenchServices
{
    /// <summary>A page's state lives and dies with the page.</summary>
    public static IServiceCollection AddWorkbench(this IServiceCollection services) => services
        .AddSingleton<SolveHookUp>((_, _) => null)
        .AddTransient<BoardPageState>()
        .AddScoped<BenchPlanner>();
}
