using GigRig.Data;
using GigRig.Domain.Gear;
using GigRig.Web.Features.Gear.Forms;

namespace GigRig.Web.Features.Gear;

/// <summary>The counts of power adapter leads. Each change is saved at once: there is nothing else on that card to wait for.</summary>
public sealed class AdaptersState(GearStore gear)
{
    private Stored<PowerAdapters>? stored;

    public AdaptersForm Form { get; } = new();

    public async Task LoadAsync()
    {
        stored = await gear.AdaptersAsync();
        Form.Show(stored.Item);
    }

    /// <summary>True where the counts as typed are now stored.</summary>
    /// <exception cref="StaleVersionException">They were changed elsewhere; what is stored is shown.</exception>
    public async Task<bool> SaveAsync()
    {
        if (stored is null || Form.Read() is not { } adapters)
            return false;
        if (adapters == stored.Item)
            return true;
        try
        {
            stored = await gear.SaveAdaptersAsync(stored with { Item = adapters });
            return true;
        }
        catch (StaleVersionException)
        {
            await LoadAsync();
            throw;
        }
    }
}
