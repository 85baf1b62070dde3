using System.Text.RegularExpressions;
using GigRig.Domain.Rules;

namespace GigRig.Domain.Tests.Rules;

/// <summary>The rule book, its documentation and its tests name the same rules.</summary>
public sealed class RuleListTests
{
    [Fact]
    public void Docs_list_every_rule_with_its_sentence_in_the_order_of_the_rule_book()
    {
        var rows = File.ReadLines(Path.Combine(AppContext.BaseDirectory, "docs", "rules.md"))
            .Select(line => Regex.Match(line, @"^\| `([a-z-]+)` \| (.+?) \| (.+?) \|$"))
            .Where(match => match.Success)
            .Select(match => (match.Groups[1].Value, match.Groups[2].Value));
        Assert.Equal(RuleBook.Rules.Select(rule => (rule.Id, rule.Sentence)), rows);
    }

    [Fact]
    public void Every_rule_has_a_class_of_tests()
    {
        var classes = typeof(RuleListTests).Assembly.GetTypes().Select(type => type.Name).ToHashSet();
        Assert.All(RuleBook.Rules, rule => Assert.Contains($"{rule.GetType().Name}Tests", classes));
    }

    [Fact]
    public void The_rule_book_holds_every_rule_that_is_written()
    {
        var written = typeof(IRule).Assembly.GetTypes().Where(type => type.IsClass && type.IsAssignableTo(typeof(IRule)));
        Assert.Equal(written.OrderBy(type => type.Name), RuleBook.Rules.Select(rule => rule.GetType()).OrderBy(type => type.Name));
    }

    [Fact]
    public void An_id_is_the_name_of_its_class_in_kebab_case_and_one_of_the_published_ids()
    {
        var published = typeof(RuleIds).GetFields().Select(field => (string)field.GetValue(null)!);
        Assert.Equal(RuleBook.Rules.Select(rule => Kebab(rule.GetType().Name)), RuleBook.Rules.Select(rule => rule.Id));
        Assert.Equal(RuleBook.Rules.Select(rule => rule.Id), published);
    }

    private static string Kebab(string className) =>
        Regex.Replace(className[..^"Rule".Length], "(?<!^)([A-Z])", "-$1").ToLowerInvariant();
}
