using System.Buffers.Text;
using System.Security.Cryptography;
using System.Text;

namespace GigRig.Data;

/// <summary>The secret part of a share link: 160 random bits, written in the URL-safe alphabet. Only its hash is ever stored.</summary>
internal static class ShareToken
{
    private const int Bytes = 20;

    // 160 bits at 6 to a character, without padding.
    private const int Characters = 27;

    public static string Create() => Base64Url.EncodeToString(RandomNumberGenerator.GetBytes(Bytes));

    /// <summary>Null for what can't be a token.</summary>
    public static byte[]? HashOf(string? token) =>
        token is { Length: Characters } && Base64Url.IsValid(token) ? SHA256.HashData(Encoding.ASCII.GetBytes(token)) : null;
}
