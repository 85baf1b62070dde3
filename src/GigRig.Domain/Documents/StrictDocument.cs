using System.Text;
using System.Text.Json;
using GigRig.Domain.Documents.Reading;
using GigRig.Domain.Rigs;

namespace GigRig.Domain.Documents;

/// <summary>Reads further documents, made of the same parts, as strictly as our own.</summary>
public static class StrictDocument
{
    /// <summary>The document where it could be read, with every complaint about its shape; there may be both. Never throws on what the text says.</summary>
    /// <param name="formatWord">What the member <c>format</c> must say.</param>
    public static (TDocument? Document, ValueList<Complaint> Complaints) Read<TDocument>(ReadOnlyMemory<byte> utf8, string formatWord)
        where TDocument : class
    {
        // Some editors put a mark before the text; the parser skips it in streams only.
        var text = utf8.Span.StartsWith(Encoding.UTF8.Preamble) ? utf8[Encoding.UTF8.Preamble.Length..] : utf8;
        var (document, list) = DocumentReader.Read<TDocument>(options => JsonDocument.Parse(text, options), formatWord);
        return (document, list.Complaints);
    }
}
