using Bunit;
using GigRig.Data;
using GigRig.Web.Features.Events;
using GigRig.Web.Features.Gear;
using GigRig.Web.Shared.Drafts;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;
using MudBlazor;
using MudBlazor.Services;
using Xunit;

namespace GigRig.Web.Tests;

/// <summary>Pages rendered over a real library. Two cores under load are slow: waits are long, and end as soon as what is waited for is there.</summary>
public abstract class PageTest : BunitContext, IAsyncLifetime
{
    private StoredLibrary? library;

    static PageTest() => DefaultWaitTimeout = TimeSpan.FromSeconds(20);

    private protected StoredLibrary Library => library!;

    protected static CancellationToken Cancel => Xunit.TestContext.Current.CancellationToken;

    protected NavigationManager Navigation => Services.GetRequiredService<NavigationManager>();

    /// <summary>The part of the address after the host.</summary>
    protected string Address => "/" + Navigation.ToBaseRelativePath(Navigation.Uri);

    private protected IReadOnlyList<string> Messages => [.. Services.GetRequiredService<ISnackbar>().ShownSnackbars.Select(shown => shown.Message!)];

    public virtual async ValueTask InitializeAsync()
    {
        library = await StoredLibrary.OpenAsync();
        JSInterop.Mode = JSRuntimeMode.Loose;
        Services.AddMudServices();
        Services.AddScoped<BrowserDrafts>();
        Services.AddSingleton(library.Gear).AddSingleton(library.Events).AddSingleton(library.Roles);
        Services.AddGearPages().AddEventPages();
        SetRendererInfo(new("Server", true));
    }

    /// <summary>Lists and messages open in a provider of their own, beside the page.</summary>
    protected IRenderedComponent<MudPopoverProvider> RenderPopovers() => Render<MudPopoverProvider>();

    protected override async ValueTask DisposeAsyncCore()
    {
        await base.DisposeAsyncCore();
        if (library is not null)
            await library.DisposeAsync();
    }
}
