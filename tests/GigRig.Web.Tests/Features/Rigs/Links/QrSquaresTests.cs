using GigRig.Web.Features.Rigs.Links;
using Xunit;
using ZXing;

namespace GigRig.Web.Tests.Features.Rigs.Links;

/// <summary>Checked from outside: a reader by other hands must find the text in the picture.</summary>
public sealed class QrSquaresTests
{
    private const int PixelsEach = 4;

    [Theory]
    [InlineData("http://localhost:5080/s/AbCdEfGhIjKlMnOpQrStUvWxYz0")]
    [InlineData("https://rigs.example/s/AbCdEfGhIjKlMnOpQrStUvWxY-_")]
    public void A_reader_finds_the_link_in_it(string link)
    {
        var squares = QrSquares.Of(link);
        var width = squares.Size * PixelsEach;
        var grey = Enumerable.Repeat((byte)255, width * width).ToArray();
        foreach (var (x, y) in squares.Dark)
            for (var pixel = 0; pixel < PixelsEach * PixelsEach; pixel++)
                grey[(((y * PixelsEach) + (pixel / PixelsEach)) * width) + (x * PixelsEach) + (pixel % PixelsEach)] = 0;

        var found = new BarcodeReaderGeneric().Decode(new RGBLuminanceSource(grey, width, width, RGBLuminanceSource.BitmapFormat.Gray8));

        Assert.Equal((BarcodeFormat.QR_CODE, link), (found.BarcodeFormat, found.Text));
    }

    /// <summary>ISO/IEC 18004 asks for a light rim of four modules on every side.</summary>
    [Fact]
    public void It_has_a_light_rim_of_four_squares()
    {
        var squares = QrSquares.Of("http://localhost:5080");

        Assert.Equal(4, squares.Dark.Min(square => Math.Min(square.X, square.Y)));
        Assert.Equal(squares.Size - 5, squares.Dark.Max(square => Math.Max(square.X, square.Y)));
    }
}
