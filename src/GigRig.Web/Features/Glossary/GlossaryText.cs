using Markdig;
using Markdig.Extensions.Tables;
using Markdig.Renderers.Html;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;
using GigRig.Web.Shared.Help;

namespace GigRig.Web.Features.Glossary;

/// <summary>The project's own list of words, <c>docs/concepts.md</c>, as a page: what users read is what the code is named after.</summary>
public static class GlossaryText
{
    private const int Bold = 2;

    private static readonly MarkdownPipeline Reading = new MarkdownPipelineBuilder().UsePipeTables().DisableHtml().Build();

    private static readonly MarkdownDocument Document = Read();

    /// <summary>Each word that is explained, as <see cref="WordAnchor"/> writes it.</summary>
    public static IReadOnlySet<string> Anchors { get; } = Terms(Document).Select(term => term.GetAttributes().Id!).ToHashSet(StringComparer.Ordinal);

    public static string Html { get; } = Document.ToHtml(Reading);

    private static MarkdownDocument Read()
    {
        using var stream = typeof(GlossaryText).Assembly.GetManifestResourceStream("concepts.md") ?? throw new InvalidOperationException("The words are missing from this build.");
        using var reader = new StreamReader(stream);
        var document = Markdown.Parse(reader.ReadToEnd(), Reading);
        foreach (var term in Terms(document))
            term.GetAttributes().Id = WordAnchor.Of(TextOf(term));
        return document;
    }

    /// <summary>The bold words of the first column of each table.</summary>
    private static IEnumerable<EmphasisInline> Terms(MarkdownDocument document) =>
        from row in document.Descendants<TableRow>()
        where !row.IsHeader
        from term in row[0].Descendants<EmphasisInline>()
        where term.DelimiterCount == Bold
        select term;

    private static string TextOf(EmphasisInline term) => string.Concat(term.Descendants<LiteralInline>().Select(literal => literal.Content.ToString()));
}
