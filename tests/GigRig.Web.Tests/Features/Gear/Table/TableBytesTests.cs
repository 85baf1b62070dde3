using System.Text;
using GigRig.Web.Features.Gear.Table;
using Xunit;

namespace GigRig.Web.Tests.Features.Gear.Table;

public sealed class TableBytesTests
{
    private const string Text = "Name;Shape\nKäfer ½ £;compact\n";

    public static TheoryData<string, bool> Writers { get; } = new() { { "utf-8", false }, { "utf-8", true }, { "utf-16", false }, { "utf-16", true }, { "utf-16BE", false }, { "utf-16BE", true }, { "windows-1252", false } };

    [Theory]
    [MemberData(nameof(Writers))]
    public void What_the_usual_programs_write_is_read(string name, bool marked)
    {
        var encoding = name == "windows-1252" ? CodePagesEncodingProvider.Instance.GetEncoding(1252)! : Encoding.GetEncoding(name);

        Assert.Equal(Text, TableBytes.Decode([.. marked ? encoding.Preamble : [], .. encoding.GetBytes(Text)]));
    }

    [Fact]
    public void Nothing_gives_nothing() => Assert.Equal("", TableBytes.Decode([]));

    [Fact]
    public async Task No_more_than_the_limit_is_read()
    {
        Assert.NotNull(await TableBytes.ReadAsync(new MemoryStream(new byte[TableBytes.Most]), TestContext.Current.CancellationToken));
        Assert.Null(await TableBytes.ReadAsync(new MemoryStream(new byte[TableBytes.Most + 1]), TestContext.Current.CancellationToken));
    }
}
