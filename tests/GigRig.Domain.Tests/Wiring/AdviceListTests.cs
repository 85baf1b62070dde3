using System.Text.RegularExpressions;
using GigRig.Domain.Wiring;

namespace GigRig.Domain.Tests.Wiring;

/// <summary>The advice that is given and its documentation name the same things.</summary>
public sealed class AdviceListTests
{
    [Fact]
    public void Docs_list_all_advice_with_its_sentence_and_its_basis_in_the_order_it_is_given()
    {
        var rows = File.ReadLines(Path.Combine(AppContext.BaseDirectory, "docs", "wiring.md"))
            .Select(line => Regex.Match(line, @"^\| `([a-z-]+)` \| (.+?) \| (.+?) \|$"))
            .Where(match => match.Success)
            .Select(match => (match.Groups[1].Value, match.Groups[2].Value, match.Groups[3].Value));
        Assert.Equal(ChainAdvice.All.Select(advice => (advice.Id, advice.Sentence, advice.Basis)), rows);
    }

    [Fact]
    public void All_advice_that_is_written_is_given()
    {
        var written = typeof(IAdvice).Assembly.GetTypes().Where(type => type.IsClass && type.IsAssignableTo(typeof(IAdvice)));
        Assert.Equal(written.OrderBy(type => type.Name), ChainAdvice.All.Select(advice => advice.GetType()).OrderBy(type => type.Name));
    }

    [Fact]
    public void An_id_is_the_name_of_its_class_in_kebab_case_and_one_of_the_published_ids()
    {
        var published = typeof(GigRig.Domain.Wiring.AdviceIds).GetFields().Select(field => (string)field.GetValue(null)!);
        Assert.Equal(ChainAdvice.All.Select(advice => Kebab(advice.GetType().Name)), ChainAdvice.All.Select(advice => advice.Id));
        Assert.Equal(ChainAdvice.All.Select(advice => advice.Id), published);
    }

    [Fact]
    public void Nothing_is_refused_on_advice() => Assert.Empty(AdviceIds().Intersect(GigRig.Domain.Rules.RuleBook.Rules.Select(rule => rule.Id)));

    private static IEnumerable<string> AdviceIds() => ChainAdvice.All.Select(advice => advice.Id);

    private static string Kebab(string className) =>
        Regex.Replace(className[..^"Advice".Length], "(?<!^)([A-Z])", "-$1").ToLowerInvariant();
}
