namespace GigRig.Web.Api;

/// <summary>Reads a request body that may not be larger than a problem can sensibly be.</summary>
internal static class BoundedBody
{
    /// <summary>Bytes. A problem with every list as long as it may be and long names stays below.</summary>
    public const int Most = 8 * 1024 * 1024;

    /// <summary>Null where it is larger; not read further then.</summary>
    public static async Task<Stream?> ReadAsync(HttpRequest request, CancellationToken cancel)
    {
        if (request.ContentLength > Most)
            return null;
        var body = new MemoryStream();
        var chunk = new byte[16 * 1024];
        for (int read; (read = await request.Body.ReadAsync(chunk, cancel)) > 0;)
        {
            if (body.Length + read > Most)
                return null;
            body.Write(chunk, 0, read);
        }

        body.Position = 0;
        return body;
    }
}
