using System.Text.RegularExpressions;
using GigRig.Web.Features.Glossary;
using GigRig.Web.Shared.Help;
using Xunit;

namespace GigRig.Web.Tests.Features.Glossary;

public sealed partial class GlossaryTests
{
    [Fact]
    public void Each_word_of_the_list_can_be_pointed_at()
    {
        Assert.All(["device", "off-board item", "hook-up", "plug", "jack", "proven"], word => Assert.Contains(WordAnchor.Of(word), GlossaryText.Anchors));
        Assert.Contains("""<strong id="word-proven">proven</strong>""", GlossaryText.Html);
        Assert.Contains("<h1>The words</h1>", GlossaryText.Html);
    }

    [Fact]
    public void Nothing_in_it_leads_to_a_file_that_the_app_does_not_have() => Assert.DoesNotContain("<a ", GlossaryText.Html);

    [Fact]
    public void Every_question_mark_of_the_app_leads_to_a_word_that_is_explained()
    {
        var source = Path.Combine(AppContext.BaseDirectory, "../../../../../src/GigRig.Web");
        var words = Directory.EnumerateFiles(source, "*.razor", SearchOption.AllDirectories)
            .SelectMany(file => Asked().Matches(File.ReadAllText(file)))
            .Select(match => match.Groups["word"].Value)
            .Concat(["proven", "impossible", "undecided"])
            .ToList();

        Assert.True(words.Count >= 8, $"{words.Count} found");
        Assert.All(words, word => Assert.Contains(WordAnchor.Of(word), GlossaryText.Anchors));
    }

    [GeneratedRegex("""(<WordHelp |<FieldCard [^>]*)\bWord="(?<word>[^"@]+)""")]
    private static partial Regex Asked();
}
