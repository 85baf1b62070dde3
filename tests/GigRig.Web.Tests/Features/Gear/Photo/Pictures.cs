using System.Buffers.Binary;
using System.Text;
using SkiaSharp;

namespace GigRig.Web.Tests.Features.Gear.Photo;

/// <summary>Files as a camera or a drawing program would write them.</summary>
internal static class Pictures
{
    /// <summary>Stands for what nobody but its owner should read, among the metadata.</summary>
    public const string Secret = "TAKEN-AT-MY-HOUSE";

    /// <summary>One plain colour in each quarter: top left, top right, bottom left, bottom right.</summary>
    public static byte[] Quarters(int width, int height, SKColor[] colours, SKEncodedImageFormat format = SKEncodedImageFormat.Jpeg)
    {
        using var surface = SKSurface.Create(new SKImageInfo(width, height));
        for (var quarter = 0; quarter < 4; quarter++)
        {
            using var paint = new SKPaint { Color = colours[quarter], BlendMode = SKBlendMode.Src };
            surface.Canvas.DrawRect(SKRect.Create(quarter % 2 * (width / 2f), quarter / 2 * (height / 2f), width / 2f, height / 2f), paint);
        }

        using var image = surface.Snapshot();
        using var data = image.Encode(format, quality: 95);
        return data.ToArray();
    }

    public static byte[] Plain(int width, int height, SKEncodedImageFormat format = SKEncodedImageFormat.Jpeg) =>
        Quarters(width, height, [SKColors.Teal, SKColors.Teal, SKColors.Teal, SKColors.Teal], format);

    /// <summary>The check over a chunk of a PNG: CRC-32 as in PNG, third edition, 5.5.</summary>
    public static uint Crc(ReadOnlySpan<byte> chunk)
    {
        var crc = uint.MaxValue;
        foreach (var octet in chunk)
        {
            crc ^= octet;
            for (var bit = 0; bit < 8; bit++)
                crc = (crc & 1) == 0 ? crc >> 1 : (crc >> 1) ^ 0xEDB88320;
        }

        return ~crc;
    }

    /// <summary>
    /// The JPEG with an APP1 segment after its first marker, laid out as in Exif 2.3 (CIPA DC-008, 4.5.4 and 4.6.4): a TIFF header, a first
    /// directory with Orientation (0x0112, SHORT) and GPSInfo (0x8825, LONG), and a GPS directory with GPSMapDatum (0x0012, ASCII).
    /// </summary>
    public static byte[] WithExif(byte[] jpeg, ushort orientation)
    {
        const int FirstDirectory = 8;
        const int GpsDirectory = FirstDirectory + 2 + (2 * 12) + 4;
        const int Text = GpsDirectory + 2 + 12 + 4;
        var text = Encoding.ASCII.GetBytes(Secret + "\0");
        var tiff = new byte[Text + text.Length];
        "MM\0*"u8.CopyTo(tiff);
        Long(4, FirstDirectory);
        Short(FirstDirectory, 2);
        Entry(FirstDirectory + 2, 0x0112, type: 3, count: 1);
        Short(FirstDirectory + 2 + 8, orientation);
        Entry(FirstDirectory + 14, 0x8825, type: 4, count: 1);
        Long(FirstDirectory + 14 + 8, GpsDirectory);
        Short(GpsDirectory, 1);
        Entry(GpsDirectory + 2, 0x0012, type: 2, count: text.Length);
        Long(GpsDirectory + 2 + 8, Text);
        text.CopyTo(tiff, Text);

        byte[] head = [0xFF, 0xE1, 0, 0, .. "Exif\0\0"u8];
        BinaryPrimitives.WriteUInt16BigEndian(head.AsSpan(2), (ushort)(head.Length - 2 + tiff.Length));
        return [.. jpeg[..2], .. head, .. tiff, .. jpeg[2..]];

        void Entry(int at, ushort tag, ushort type, int count)
        {
            Short(at, tag);
            Short(at + 2, type);
            Long(at + 4, count);
        }

        void Short(int at, int value) => BinaryPrimitives.WriteUInt16BigEndian(tiff.AsSpan(at), (ushort)value);
        void Long(int at, int value) => BinaryPrimitives.WriteInt32BigEndian(tiff.AsSpan(at), value);
    }
}
