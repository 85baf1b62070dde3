using Microsoft.Extensions.FileProviders;

namespace GigRig.Web.Handouts;

/// <summary>The style sheets of a handout: linked from a page, written into a file that stands alone.</summary>
internal static class HandoutStyles
{
    public static IReadOnlyList<string> Sheets { get; } = ["css/tokens.css", "css/app.css", "css/drawing.css", "css/sheets.css"];

    /// <summary>All of them in full. None asks for another file, so that whatever holds them needs no network.</summary>
    public static async Task<string> ReadAsync(IFileProvider webRoot, CancellationToken cancel)
    {
        var texts = new List<string>();
        foreach (var sheet in Sheets)
        {
            await using var stream = webRoot.GetFileInfo(sheet).CreateReadStream();
            using var reader = new StreamReader(stream);
            texts.Add(await reader.ReadToEndAsync(cancel));
        }

        return string.Join('\n', texts);
    }
}
