namespace GigRig.Web.Features.Plan;

internal static class PlanServices
{
    public static IServiceCollection AddPlanPage(this IServiceCollection services) => services.AddScoped<PlanPageState>();
}
