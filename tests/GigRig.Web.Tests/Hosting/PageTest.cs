using Blazor.Diagrams.Core.Geometry;
using Bunit;
using GigRig.Web.Features.Events;
using GigRig.Web.Features.Gear;
using GigRig.Web.Features.ImportExport;
using GigRig.Web.Features.Plan;
using GigRig.Web.Features.Rigs;
using GigRig.Web.Features.Start;
using GigRig.Web.Features.Workbench;
using GigRig.Web.Guesses;
using GigRig.Web.Queue;
using GigRig.Web.Shared.Drafts;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;
using MudBlazor;
using MudBlazor.Services;
using Xunit;

namespace GigRig.Web.Tests.Hosting;

/// <summary>A page over a real library, without a browser. Popups are rendered beside it.</summary>
public abstract class PageTest : BunitContext, IAsyncLifetime
{
    // Two cores under load.
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(20);

    private protected Library Library { get; private set; } = null!;

    private protected IRenderedComponent<MudPopoverProvider> Popups { get; private set; } = null!;

    private protected static CancellationToken Cancel => Xunit.TestContext.Current.CancellationToken;

    protected NavigationManager Navigation => Services.GetRequiredService<NavigationManager>();

    /// <summary>The part of the address after the host.</summary>
    protected string Address => "/" + Navigation.ToBaseRelativePath(Navigation.Uri);

    /// <summary>What was said to the user in passing.</summary>
    protected IReadOnlyList<string> Messages => [.. Services.GetRequiredService<ISnackbar>().ShownSnackbars.Select(shown => shown.Message!)];

    public virtual async ValueTask InitializeAsync()
    {
        Library = await Library.OpenAsync();
        JSInterop.Mode = JSRuntimeMode.Loose;
        // The chain diagram asks the browser how large it is and can't do without an answer.
        JSInterop.Setup<Rectangle>("ZBlazorDiagrams.getBoundingClientRect", _ => true).SetResult(new(0, 0, 900, 400));
        DefaultWaitTimeout = Patience;
        foreach (var store in new object[] { Library.Gear, Library.Batch, Library.Photos, Library.Events, Library.Rigs, Library.Links, Library.Roles, Library.File })
            Services.AddSingleton(store.GetType(), store);
        Services.AddSingleton(Library.Time);
        Services.AddMudServices();
        Services.AddPlanQueue();
        Services.AddGuesses();
        Services.AddScoped<BrowserDrafts>();
        Services.AddStartPage().AddGearPages().AddEventPages().AddPlanPage().AddRigPages().AddWorkbench().AddLibraryPage();
        SetRendererInfo(new("Server", isInteractive: true));
        Popups = Render<MudPopoverProvider>();
    }

    protected override async ValueTask DisposeAsyncCore()
    {
        await base.DisposeAsyncCore();
        await Library.DisposeAsync();
    }
}
