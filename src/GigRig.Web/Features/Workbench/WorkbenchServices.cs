using GigRig.Domain.Rigs;
using GigRig.Planning;

namespace GigRig.Web.Features.Workbench;

internal static class WorkbenchServices
{
    /// <summary>A hook-up is asked for between two moves of the hands and must not keep them waiting; mostly it takes milliseconds.</summary>
    private static readonly TimeSpan HookUpPatience = TimeSpan.FromMilliseconds(500);

    /// <summary>A page's state lives and dies with the page.</summary>
    public static IServiceCollection AddWorkbench(this IServiceCollection services) => services
        .AddSingleton<SolveHookUp>(provider =>
        {
            var (planner, time) = (provider.GetRequiredService<RigPlanner>(), provider.GetRequiredService<TimeProvider>());
            return (problem, devices, before) =>
            {
                using var patience = new CancellationTokenSource(HookUpPatience, time);
                return planner.HookUp(problem, devices, before, patience.Token) is HookUpAnswer.Fed fed ? fed.HookUp : null;
            };
        })
        .AddTransient<BoardPageState>()
        .AddScoped<BenchPlanner>();
}
