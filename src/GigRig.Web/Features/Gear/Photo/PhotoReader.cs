using SkiaSharp;

namespace GigRig.Web.Features.Gear.Photo;

/// <summary>What became of a file that was chosen as a photo.</summary>
public abstract record PhotoRead
{
    private PhotoRead()
    {
    }

    /// <param name="Jpeg">The picture drawn anew: upright, small, without anything the file said about time, place or camera.</param>
    public sealed record Accepted(byte[] Jpeg) : PhotoRead;

    /// <param name="Why">Names the file, what is wrong with it, the limit, and what to do.</param>
    public sealed record Refused(string Why) : PhotoRead;
}

/// <summary>
/// Draws a chosen picture anew, so that nothing of the file but its pixels is kept. The size in pixels is read and judged before any pixel is: a
/// small file can hold a picture larger than the memory.
/// </summary>
public static class PhotoReader
{
    /// <summary>The largest file that is taken, in bytes: ten megabytes.</summary>
    public const int MostBytes = 10_000_000;

    /// <summary>The largest picture that is taken, in pixels.</summary>
    public const int MostPixels = 50_000_000;

    /// <summary>The longer side of what is kept, in pixels. Smaller pictures keep their size.</summary>
    public const int LongestSide = 1024;

    public const string ContentType = "image/jpeg";

    /// <summary>What a file dialog offers. Phones that keep photos in another format hand over one of these when asked so.</summary>
    public const string Accept = "image/jpeg,image/png,image/webp";

    private const int Quality = 85;

    /// <param name="name">Of the file, for the words of a refusal.</param>
    public static PhotoRead Read(string name, byte[] file)
    {
        if (file.Length > MostBytes)
            return TooLarge(name, file.Length);
        using var data = SKData.CreateCopy(file);
        using var codec = SKCodec.Create(data);
        if (codec is null)
            return new PhotoRead.Refused($"{name} is no picture that can be read here. Choose a JPEG, PNG or WebP file.");
        var (width, height) = (codec.Info.Width, codec.Info.Height);
        if ((long)width * height > MostPixels)
            return new PhotoRead.Refused($"{name} is {width} × {height} pixels; at most {MostPixels / 1_000_000} million are read. Make it smaller and choose it again.");
        using var pixels = Decode(codec);
        return pixels is null
            ? new PhotoRead.Refused($"{name} is damaged or cut short: not all of its {width} × {height} pixels are there. Choose another copy of it.")
            : new PhotoRead.Accepted(Upright(pixels, codec.EncodedOrigin, new SKSizeI(width, height)));
    }

    /// <param name="bytes">As the browser gives it, so that a large file need not be sent to be refused.</param>
    public static PhotoRead.Refused TooLarge(string name, long bytes) =>
        new(FormattableString.Invariant($"{name} has {bytes / 1e6:0.0} MB; a photo has at most {MostBytes / 1_000_000} MB. Make it smaller and choose it again."));

    /// <summary>Null where pixels are missing.</summary>
    private static SKBitmap? Decode(SKCodec codec)
    {
        // JPEGs can be read at a fraction of their size. Twice what is kept leaves enough to blend.
        var size = codec.GetScaledDimensions(Math.Min(1, 2f * LongestSide / Math.Max(codec.Info.Width, codec.Info.Height)));
        var bitmap = new SKBitmap(new SKImageInfo(size.Width, size.Height, SKColorType.Rgba8888, SKAlphaType.Premul, SKColorSpace.CreateSrgb()));
        if (codec.GetPixels(bitmap.Info, bitmap.GetPixels()) == SKCodecResult.Success)
            return bitmap;
        bitmap.Dispose();
        return null;
    }

    private static byte[] Upright(SKBitmap pixels, SKEncodedOrigin origin, SKSizeI full)
    {
        var scale = Math.Min(1, (float)LongestSide / Math.Max(full.Width, full.Height));
        var lying = new SKSizeI(Math.Max(1, (int)Math.Round(full.Width * scale)), Math.Max(1, (int)Math.Round(full.Height * scale)));
        var standing = origin >= SKEncodedOrigin.LeftTop ? new SKSizeI(lying.Height, lying.Width) : lying;
        using var surface = SKSurface.Create(new SKImageInfo(standing.Width, standing.Height));
        // What is transparent has to become something: JPEG has no such thing.
        surface.Canvas.Clear(SKColors.White);
        surface.Canvas.Concat(Turned(origin, standing.Width, standing.Height));
        using var image = SKImage.FromBitmap(pixels);
        surface.Canvas.DrawImage(image, SKRect.Create(lying.Width, lying.Height), new SKSamplingOptions(SKFilterMode.Linear, SKMipmapMode.Linear));
        using var drawn = surface.Snapshot();
        using var jpeg = drawn.Encode(SKEncodedImageFormat.Jpeg, Quality);
        return jpeg.ToArray();
    }

    /// <summary>From the pixels as stored to the picture as seen, which is so wide and so high. The names say where the first row and the first column are seen.</summary>
    private static SKMatrix Turned(SKEncodedOrigin origin, float width, float height) => origin switch
    {
        SKEncodedOrigin.TopRight => Matrix(-1, 0, width, 0, 1, 0),
        SKEncodedOrigin.BottomRight => Matrix(-1, 0, width, 0, -1, height),
        SKEncodedOrigin.BottomLeft => Matrix(1, 0, 0, 0, -1, height),
        SKEncodedOrigin.LeftTop => Matrix(0, 1, 0, 1, 0, 0),
        SKEncodedOrigin.RightTop => Matrix(0, -1, width, 1, 0, 0),
        SKEncodedOrigin.RightBottom => Matrix(0, -1, width, -1, 0, height),
        SKEncodedOrigin.LeftBottom => Matrix(0, 1, 0, -1, 0, height),
        _ => SKMatrix.Identity,
    };

    private static SKMatrix Matrix(float xx, float xy, float x, float yx, float yy, float y) => new(xx, xy, x, yx, yy, y, 0, 0, 1);
}
