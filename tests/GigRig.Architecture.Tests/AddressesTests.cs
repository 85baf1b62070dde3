using System.Reflection;
using System.Text.RegularExpressions;
using GigRig.Web;
using Microsoft.AspNetCore.Components;
using Xunit;

namespace GigRig.Architecture.Tests;

/// <summary>Every address of the app stands in <see cref="GigRigUrls"/>.</summary>
public sealed class AddressesTests
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
    public void Nobody_else_spells_an_address_out()
    {
        var firstWords = Known.Where(known => known.Length > 1 && known[0] == '/').Select(address => address.Split('/')[1]).Distinct();
        var spelledOut = new Regex($"""["(]/({string.Join('|', firstWords)})(?![\w-])|\bhref="(?![@#]|https?:|[\w/.-]+\.(css|svg)")""");

        Offenders.None(
            SourceFile.Code("src/GigRig.Web")
                .Where(file => file.Path != "src/GigRig.Web/GigRigUrls.cs")
                .SelectMany(file => file.FindInCode(spelledOut))
                .Where(found => !found.EndsWith("""<base href="/" />""", StringComparison.Ordinal)));
    }
}
