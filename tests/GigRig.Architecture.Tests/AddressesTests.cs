using System.Reflection;
using System.Text.RegularExpressions;
using GigRig.Web;
using Microsoft.AspNetCore.Components;
using Xunit;

namespace GigRig.Architecture.Tests;

/// <summary>Every address of the app stands in <see cref="GigRigUrls"/>.</summary>
public sealed partial class AddressesTests
{
    private static readonly string[] Known = [.. typeof(GigRigUrls).GetFields(BindingFlags.Public | BindingFlags.Static).Where(field => field.IsLiteral).Select(field => (string)field.GetRawConstantValue()!)];

    [Fact]
    public void Every_page_answers_at_an_address_of_the_list()
    {
        var routes = OurAssemblies.Web.GetTypes().SelectMany(type => type.GetCustomAttributes<RouteAttribute>()).Select(route => route.Template).ToList();

        Assert.NotEmpty(routes);
        Offenders.None(routes.Where(route => !Known.Contains(route, StringComparer.Ordinal)));
    }

    [Fact]
    public void Nobody_else_spells_an_address_out() =>
        Offenders.None(
            SourceFile.Code("src/GigRig.Web")
                .Where(file => file.Path != "src/GigRig.Web/GigRigUrls.cs")
                .SelectMany(file => file.FindInCode(SpelledOut()))
                .Where(found => !IsFrameworks(found)));

    // The socket Blazor itself opens is not an address of ours, and a base of "/" is where all of them start.
    private static bool IsFrameworks(string found) => found.Contains("\"/_blazor\"", StringComparison.Ordinal);

    /// <summary>A literal that starts like a path, or a link written into the markup.</summary>
    [GeneratedRegex("""(?<!\w)"/[a-z_][\w/{}-]*"|\bhref="/?[a-z]+/?[^"#:@]*"(?<!\.css")""")]
    private static partial Regex SpelledOut();
}
