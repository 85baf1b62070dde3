using System.Text;

namespace GigRig.Web.Features.Gear.Table;

/// <summary>The bytes of a table as text, whatever program wrote them: UTF-8, UTF-16 of either order, or else Windows-1252.</summary>
public static class TableBytes
{
    /// <summary>The most that is read: one megabyte.</summary>
    public const int Most = 1_000_000;

    /// <summary>Null where the stream is longer than <see cref="Most"/>. Never more than that is held.</summary>
    public static async Task<byte[]?> ReadAsync(Stream stream, CancellationToken cancel = default)
    {
        using var kept = new MemoryStream();
        var buffer = new byte[16_384];
        int read;
        while ((read = await stream.ReadAsync(buffer, cancel)) > 0)
        {
            if (kept.Length + read > Most)
                return null;
            kept.Write(buffer, 0, read);
        }

        return kept.ToArray();
    }

    public static string Decode(ReadOnlySpan<byte> bytes) => bytes switch
    {
        [0xEF, 0xBB, 0xBF, .. var rest] => Encoding.UTF8.GetString(rest),
        [0xFF, 0xFE, .. var rest] => Encoding.Unicode.GetString(rest),
        [0xFE, 0xFF, .. var rest] => Encoding.BigEndianUnicode.GetString(rest),
        // Without a mark: in UTF-16 every second byte of plain letters is zero.
        [not 0, 0, not 0, 0, ..] => Encoding.Unicode.GetString(bytes),
        [0, not 0, 0, not 0, ..] => Encoding.BigEndianUnicode.GetString(bytes),
        _ => DecodeWithoutMark(bytes),
    };

    private static string DecodeWithoutMark(ReadOnlySpan<byte> bytes)
    {
        try
        {
            return new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(bytes);
        }
        catch (DecoderFallbackException)
        {
            return CodePagesEncodingProvider.Instance.GetEncoding(1252)!.GetString(bytes);
        }
    }
}
