using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace GigRig.Browser.Tests.Harness;

/// <summary>What axe-core finds against WCAG 2.2, levels A and AA. It sees perhaps half of what can be wrong; the other half needs people.</summary>
internal static class Axe
{
    private static readonly AxeRunOptions Options = new()
    {
        RunOnly = new RunOnlyOptions { Type = "tag", Values = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"] },
    };

    /// <summary>One line a fault: where, which rule, which element.</summary>
    public static async Task<IReadOnlyList<string>> FaultsAsync(IPage page, string where)
    {
        var result = await page.RunAxe(Options);
        return [.. result.Violations.SelectMany(fault => fault.Nodes.Select(node => $"{where}: {fault.Id} ({fault.Help}): {node.Html}"))];
    }
}
