using System.Buffers.Binary;
using System.Text;
using GigRig.Web.Features.Gear.Photo;
using SkiaSharp;
using Xunit;

namespace GigRig.Web.Tests.Features.Gear.Photo;

public sealed class PhotoReaderTests
{
    private static readonly SKColor[] Colours = [SKColors.Red, SKColors.Lime, SKColors.Blue, SKColors.Black];

    /// <summary>
    /// Where the first row and the first column of the file are seen, for each Orientation (tag 0x0112) of Exif 2.3 (CIPA DC-008, 4.6.4 A), which
    /// is that of TIFF 6.0; then the quarters as seen, as they follow: top left, top right, bottom left, bottom right.
    /// </summary>
    public static TheoryData<ushort, string, int[]> Orientations { get; } = new()
    {
        { 1, "row: top, column: left", [0, 1, 2, 3] },
        { 2, "row: top, column: right", [1, 0, 3, 2] },
        { 3, "row: bottom, column: right", [3, 2, 1, 0] },
        { 4, "row: bottom, column: left", [2, 3, 0, 1] },
        { 5, "row: left, column: top", [0, 2, 1, 3] },
        { 6, "row: right, column: top", [2, 0, 3, 1] },
        { 7, "row: right, column: bottom", [3, 1, 2, 0] },
        { 8, "row: left, column: bottom", [1, 3, 0, 2] },
    };

    [Theory]
    [MemberData(nameof(Orientations))]
    public void A_photo_stands_upright_however_the_camera_was_held(ushort orientation, string standard, int[] seen)
    {
        var file = Pictures.WithExif(Pictures.Quarters(400, 240, Colours), orientation);

        using var photo = Decode(Accepted(file));

        Assert.Equal(standard.StartsWith("row: top", StringComparison.Ordinal) || standard.StartsWith("row: bottom", StringComparison.Ordinal) ? (400, 240) : (240, 400), (photo.Width, photo.Height));
        for (var quarter = 0; quarter < 4; quarter++)
            AssertNear(Colours[seen[quarter]], photo.GetPixel(photo.Width * (1 + (quarter % 2 * 2)) / 4, photo.Height * (1 + (quarter / 2 * 2)) / 4));
    }

    [Fact]
    public void Nothing_the_camera_wrote_beside_the_pixels_is_kept()
    {
        var file = Pictures.WithExif(Pictures.Plain(300, 200), orientation: 6);
        Assert.Contains(Pictures.Secret, Encoding.Latin1.GetString(file));

        var kept = Encoding.Latin1.GetString(Accepted(file));

        Assert.DoesNotContain(Pictures.Secret, kept);
        Assert.DoesNotContain("Exif", kept);
        Assert.StartsWith("\u00FF\u00D8\u00FF", kept, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(3000, 1500, 1024, 512)]
    [InlineData(1500, 3000, 512, 1024)]
    [InlineData(1025, 1025, 1024, 1024)]
    [InlineData(640, 480, 640, 480)]
    [InlineData(5000, 1, 1024, 1)]
    public void A_large_picture_is_made_smaller_and_a_small_one_is_left(int width, int height, int keptWidth, int keptHeight)
    {
        foreach (var format in new[] { SKEncodedImageFormat.Jpeg, SKEncodedImageFormat.Png, SKEncodedImageFormat.Webp })
        {
            using var photo = Decode(Accepted(Pictures.Plain(width, height, format)));

            Assert.Equal((keptWidth, keptHeight), (photo.Width, photo.Height));
            AssertNear(SKColors.Teal, photo.GetPixel(keptWidth / 2, keptHeight / 2));
        }
    }

    [Fact]
    public void What_is_transparent_becomes_white()
    {
        using var photo = Decode(Accepted(Pictures.Quarters(100, 100, [SKColors.Transparent, SKColors.Red, SKColors.Red, SKColors.Red], SKEncodedImageFormat.Png)));

        AssertNear(SKColors.White, photo.GetPixel(25, 25));
    }

    [Theory]
    [InlineData("")]
    [InlineData("a shopping list")]
    [InlineData("<svg xmlns='http://www.w3.org/2000/svg'/>")]
    public void What_is_no_picture_is_refused(string text) =>
        Assert.Equal("list.jpg is no picture that can be read here. Choose a JPEG, PNG or WebP file.", Refused("list.jpg", Encoding.UTF8.GetBytes(text)));

    [Fact]
    public void A_picture_cut_short_is_refused()
    {
        var file = Pictures.Quarters(400, 300, Colours);

        Assert.Equal(
            "half.jpg is damaged or cut short: not all of its 400 × 300 pixels are there. Choose another copy of it.",
            Refused("half.jpg", file[..(file.Length / 2)]));
    }

    [Fact]
    public void A_small_file_that_claims_too_many_pixels_is_refused_before_they_are_read()
    {
        // Width and height stand in the IHDR chunk of a PNG, whose CRC follows (PNG, third edition, 5.3 and 11.2.1).
        var file = Pictures.Plain(8, 8, SKEncodedImageFormat.Png);
        BinaryPrimitives.WriteInt32BigEndian(file.AsSpan(16), 10_001);
        BinaryPrimitives.WriteInt32BigEndian(file.AsSpan(20), 5_000);
        BinaryPrimitives.WriteUInt32BigEndian(file.AsSpan(29), Pictures.Crc(file.AsSpan(12, 17)));

        Assert.Equal("huge.png is 10001 × 5000 pixels; at most 50 million are read. Make it smaller and choose it again.", Refused("huge.png", file));
    }

    [Fact]
    public void A_file_too_large_is_refused() =>
        Assert.Equal("raw.jpg has 12.3 MB; a photo has at most 10 MB. Make it smaller and choose it again.", Refused("raw.jpg", new byte[12_345_678]));

    [Fact]
    public void Any_damage_is_answered_in_words_or_with_a_picture()
    {
        const int Seed = 20270306;
        var random = new Random(Seed);
        var whole = Pictures.WithExif(Pictures.Quarters(64, 48, Colours), orientation: 6);
        for (var round = 0; round < 300; round++)
        {
            var file = whole.ToArray();
            for (var hit = random.Next(1, 8); hit > 0; hit--)
                file[random.Next(file.Length)] = (byte)random.Next(256);

            var fault = Record.Exception(() => PhotoReader.Read("damaged.jpg", file[..random.Next(1, file.Length + 1)]));

            Assert.True(fault is null, $"Seed {Seed}, round {round}: {fault}");
        }
    }

    private static byte[] Accepted(byte[] file) => Assert.IsType<PhotoRead.Accepted>(PhotoReader.Read("mine.jpg", file)).Jpeg;

    private static string Refused(string name, byte[] file) => Assert.IsType<PhotoRead.Refused>(PhotoReader.Read(name, file)).Why;

    private static SKBitmap Decode(byte[] jpeg)
    {
        using var codec = SKCodec.Create(SKData.CreateCopy(jpeg));
        Assert.Equal(SKEncodedImageFormat.Jpeg, codec.EncodedFormat);
        Assert.Equal(SKEncodedOrigin.TopLeft, codec.EncodedOrigin);
        return SKBitmap.Decode(codec);
    }

    private static void AssertNear(SKColor expected, SKColor found)
    {
        const int Blur = 12;
        Assert.True(
            Math.Abs(expected.Red - found.Red) <= Blur && Math.Abs(expected.Green - found.Green) <= Blur && Math.Abs(expected.Blue - found.Blue) <= Blur,
            $"{found} is not {expected}");
    }
}
