using GigRig.Web.Hosting;
using Microsoft.AspNetCore.Builder;
using Microsoft.Extensions.Configuration;
using Xunit;

namespace GigRig.Web.Tests.Hosting;

public sealed class ListenPolicyTests
{
    [Theory]
    [InlineData("http://localhost:5080")]
    [InlineData("http://127.0.0.1:5080")]
    [InlineData("http://[::1]:5080")]
    [InlineData("https://LOCALHOST:5081")]
    [InlineData("http://127.8.8.8:0")]
    public void This_computer_alone_is_fine(string address) => Applied(("urls", address));

    [Theory]
    [InlineData("http://0.0.0.0:5080")]
    [InlineData("http://*:5080")]
    [InlineData("http://+:5080")]
    [InlineData("http://[::]:5080")]
    [InlineData("http://192.168.1.7:5080")]
    [InlineData("http://example.org:5080")]
    [InlineData("http://localhost:5080;http://0.0.0.0:5081")]
    public void What_others_can_reach_is_refused_and_said_why(string addresses)
    {
        var refused = Assert.Throws<StartRefusedException>(() => Applied(("urls", addresses)));

        Assert.Contains("can be reached from other computers", refused.Message);
        Assert.Contains("no login yet", refused.Message);
        Assert.Contains("GIGRIG_ALLOW_PUBLIC=1", refused.Message);
    }

    [Theory]
    [InlineData("http_ports", "8080")]
    [InlineData("https_ports", "8443")]
    [InlineData("Kestrel:Endpoints:Open:Url", "http://0.0.0.0:9000")]
    public void Other_ways_to_open_a_port_are_refused_too(string key, string value) =>
        Assert.Throws<StartRefusedException>(() => Applied((key, value)));

    [Theory]
    [InlineData("5081")]
    [InlineData("localhost:5081")]
    [InlineData("ftp://localhost:5081")]
    [InlineData("http://localhost:99999")]
    [InlineData("http://localhost:0")]
    [InlineData("http://localhost:5081/app")]
    [InlineData("http://localhost:5080;5081")]
    public void What_is_no_address_is_refused_in_words(string addresses)
    {
        var refused = Assert.Throws<StartRefusedException>(() => Applied(("urls", addresses)));

        Assert.EndsWith(
            $"\"{addresses.Split(';')[^1]}\" is no address to listen on. Give one such as http://localhost:5080: http or https, a host, and a port from 1 to 65535.",
            refused.Message);
    }

    [Fact]
    public void The_owner_may_say_so() => Assert.Null(Applied(("urls", "http://0.0.0.0:5080"), ("GIGRIG_ALLOW_PUBLIC", "1"))["AllowedHosts"]);

    [Theory]
    [InlineData("true")]
    [InlineData("yes")]
    [InlineData("0")]
    public void Anything_but_the_digit_is_no_permission(string value) =>
        Assert.Throws<StartRefusedException>(() => Applied(("urls", "http://0.0.0.0:5080"), ("GIGRIG_ALLOW_PUBLIC", value)));

    [Fact]
    public void On_loopback_only_loopback_names_are_answered() =>
        Assert.Equal("localhost;127.0.0.1;[::1]", Applied(("urls", "http://localhost:5080"))["AllowedHosts"]);

    private static IConfiguration Applied(params (string Key, string Value)[] settings)
    {
        var builder = WebApplication.CreateEmptyBuilder(new());
        builder.Configuration.AddInMemoryCollection(settings.Select(s => new KeyValuePair<string, string?>(s.Key, s.Value)));
        ListenPolicy.Apply(builder);
        return builder.Configuration;
    }
}
