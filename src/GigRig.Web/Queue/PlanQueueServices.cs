using GigRig.Planning;

namespace GigRig.Web.Queue;

internal static class PlanQueueServices
{
    public static void AddPlanQueue(this IServiceCollection services)
    {
        services.AddSingleton(_ => new RigPlanner(new PlanMemory()));
        services.AddSingleton<AskPlanner>(provider =>
        {
            var planner = provider.GetRequiredService<RigPlanner>();
            return (problem, progress, cancel) => planner.PlanAsync(problem, null, progress, cancel);
        });
        services.AddSingleton<AskTidying>(provider =>
        {
            var planner = provider.GetRequiredService<RigPlanner>();
            return (problem, rig, progress, cancel) => planner.TidyAsync(problem, rig, null, progress, cancel);
        });
        services.AddSingleton(provider => new PlanQueue(provider.GetRequiredService<AskPlanner>()));
    }
}
