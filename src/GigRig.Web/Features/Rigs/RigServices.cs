using GigRig.Web.Features.Rigs.History;

namespace GigRig.Web.Features.Rigs;

internal static class RigServices
{
    /// <summary>A page's state lives and dies with the page.</summary>
    public static IServiceCollection AddRigPages(this IServiceCollection services) => services
        .AddTransient<RigListState>()
        .AddTransient<RigPageState>()
        .AddTransient<RigHistoryState>()
        .AddTransient<RigSwapState>()
        .AddTransient<ChainCardState>();
}
