using Blazor.Diagrams.Core.Geometry;
using Bunit;
using GigRig.Data;
using GigRig.Web.Features.Plan;
using GigRig.Web.Queue;
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

    public virtual async ValueTask InitializeAsync()
    {
        Library = await Library.OpenAsync();
        JSInterop.Mode = JSRuntimeMode.Loose;
        // The canvas asks the browser how large it is and can't do without an answer.
        JSInterop.Setup<Rectangle>("ZBlazorDiagrams.getBoundingClientRect", _ => true).SetResult(new(0, 0, 900, 400));
        DefaultWaitTimeout = Patience;
        foreach (var store in new object[] { Library.Gear, Library.Events, Library.Rigs, Library.Links, Library.Services.GetRequiredService<RoleStore>() })
            Services.AddSingleton(store.GetType(), store);
        Services.AddSingleton(Library.Time);
        Services.AddMudServices();
        Services.AddPlanQueue();
        Services.AddPlanPage();
        SetRendererInfo(new("Server", isInteractive: true));
        Popups = Render<MudPopoverProvider>();
    }

    protected override async ValueTask DisposeAsyncCore()
    {
        await base.DisposeAsyncCore();
        await Library.DisposeAsync();
    }
}
