using System.Text.Json;
using Microsoft.JSInterop;

namespace GigRig.Web.Features.Gear.Care;

/// <summary>A narrowed list under a name.</summary>
/// <param name="Query">The part of the address after the question mark.</param>
public sealed record SavedFilter(string Name, string Query);

/// <summary>The filters somebody named, kept in their browser. What comes back is input like any other.</summary>
public sealed class SavedFilters(IJSRuntime js)
{
    public const int Most = 20;
    public const int LongestName = 60;
    private const string Key = "gear/filters";
    private const int LongestQuery = 1000;

    public async Task<IReadOnlyList<SavedFilter>> AllAsync()
    {
        try
        {
            var kept = await js.InvokeAsync<string?>("gigrigDrafts.find", Key);
            var all = string.IsNullOrEmpty(kept) ? [] : JsonSerializer.Deserialize<List<SavedFilter?>>(kept) ?? [];
            return [.. all.OfType<SavedFilter>().Where(filter => filter is { Name.Length: > 0 and <= LongestName, Query.Length: > 0 and <= LongestQuery }).Take(Most)];
        }
        catch (JsonException)
        {
            // Kept by another release of the app.
            return [];
        }
    }

    /// <summary>One under the same name is replaced, the oldest makes room where there are too many.</summary>
    public async Task<IReadOnlyList<SavedFilter>> KeepAsync(string name, string query)
    {
        var all = (await AllAsync()).Where(filter => !filter.Name.Equals(name, StringComparison.CurrentCultureIgnoreCase)).Append(new(name, query)).TakeLast(Most).ToList();
        await WriteAsync(all);
        return all;
    }

    public async Task<IReadOnlyList<SavedFilter>> DropAsync(SavedFilter gone)
    {
        var all = (await AllAsync()).Where(filter => filter != gone).ToList();
        await WriteAsync(all);
        return all;
    }

    private ValueTask WriteAsync(IReadOnlyList<SavedFilter> all) => js.InvokeVoidAsync("gigrigDrafts.keep", Key, JsonSerializer.Serialize(all));
}
