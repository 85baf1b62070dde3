using System.Text.Json;
using GigRig.Web.Shared.Forms;
using Microsoft.JSInterop;

namespace GigRig.Web.Shared.Drafts;

/// <summary>
/// Keeps what is typed and not saved yet in the browser, so that neither a wrong click, a reload nor a restart of the app loses it. What comes
/// back is input like any other: it fills a form and goes through the form's check.
/// </summary>
public sealed class BrowserDrafts(IJSRuntime js)
{
    // Well below the largest message the browser may send over the page's connection.
    private const int MostCharacters = 24_000;

    public ValueTask KeepAsync(string key, LiveForm form) => KeepAsync(key, JsonSerializer.Serialize(form, form.GetType()));

    public async ValueTask KeepAsync(string key, string text)
    {
        if (text.Length <= MostCharacters)
            await js.InvokeVoidAsync("gigrigDrafts.keep", key, text);
    }

    /// <summary>Null where nothing is kept, or nothing that can be read.</summary>
    public async ValueTask<LiveForm?> FindAsync(string key, Type form)
    {
        try
        {
            return await FindAsync(key) is { } text ? (LiveForm?)JsonSerializer.Deserialize(text, form) : null;
        }
        catch (JsonException)
        {
            // Kept by another release of the app, whose form was a different one.
            return null;
        }
    }

    /// <summary>Null where nothing is kept.</summary>
    public async ValueTask<string?> FindAsync(string key) => await js.InvokeAsync<string?>("gigrigDrafts.find", key) is { Length: > 0 } text ? text : null;

    /// <summary>The key under which this tab alone keeps its draft of a thing that several tabs may work on; what a closed tab left behind is taken over.</summary>
    public async ValueTask<string> OwnKeyAsync(string thing) => await js.InvokeAsync<string?>("gigrigDrafts.ownKey", thing) ?? thing;

    public ValueTask DropAsync(string key) => js.InvokeVoidAsync("gigrigDrafts.drop", key);
}
