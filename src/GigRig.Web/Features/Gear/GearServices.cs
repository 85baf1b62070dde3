using GigRig.Web.Features.Gear.Care;
using GigRig.Web.Features.Gear.Photo;
using GigRig.Web.Features.Gear.Quick;
using GigRig.Web.Features.Gear.Table;

namespace GigRig.Web.Features.Gear;

internal static class GearServices
{
    /// <summary>A page's state lives and dies with the page.</summary>
    public static IServiceCollection AddGearPages(this IServiceCollection services) => services
        .AddTransient<GearListState>()
        .AddTransient<AdaptersState>()
        .AddTransient<PhotoState>()
        .AddScoped<SavedFilters>()
        .AddTransient<QuickAddState>()
        .AddTransient<TableImportState>()
        .AddSingleton<GearItemStates>();
}
