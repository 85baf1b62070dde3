namespace GigRig.Web.Features.Events;

internal static class EventServices
{
    /// <summary>A page's state lives and dies with the page.</summary>
    public static IServiceCollection AddEventPages(this IServiceCollection services) => services
        .AddTransient<EventListState>()
        .AddTransient<EventTypeState>();
}
