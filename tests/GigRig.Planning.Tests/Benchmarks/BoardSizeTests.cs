using GigRig.Benchmarks.Problems;

namespace GigRig.Planning.Tests.Benchmarks;

public sealed class BoardSizeTests
{
    [Theory]
    [InlineData("460x135", 460, 135)]
    [InlineData("1X3000", 1, 3000)]
    public void Width_and_depth_are_read(string text, int width, int depth) => Assert.Equal(new BoardSize(width, depth), BoardSize.Parse(text));

    [Theory]
    [InlineData("460")]
    [InlineData("0x135")]
    [InlineData("460x3001")]
    [InlineData("460x135x20")]
    [InlineData("wide x deep")]
    public void Anything_else_is_no_size(string text) => Assert.Null(BoardSize.Parse(text));
}
