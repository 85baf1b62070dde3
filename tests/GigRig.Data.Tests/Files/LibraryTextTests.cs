using System.Text;
using CsCheck;
using GigRig.Data.Files;

namespace GigRig.Data.Tests.Files;

public sealed class LibraryTextTests
{
    [Fact]
    public void Any_library_is_written_and_read_back_the_same() => AnyLibrary.Content.Sample(
        content =>
        {
            var text = LibraryText.Write(content);
            var complaints = new ComplaintList();
            var read = LibraryText.Read(Encoding.UTF8.GetBytes(text), complaints);
            Assert.Empty(complaints.All);
            Assert.Equal(text, LibraryText.Write(read!));
        },
        iter: 100,
        threads: 1);

    [Fact]
    public void A_spoilt_file_is_complained_of_and_never_throws()
    {
        var spoilt =
            from content in AnyLibrary.Content
            from at in Gen.Double[0, 1]
            from cut in Gen.Int[0, 40]
            from put in Gen.OneOf("", "\0", "{", "}", "[", "]", "\"", "-", "1e999", "NaN", "99999999999", "2147483647", "-2147483648", "null", "\"\\ud800\"", ",", "é")
            select Spoil(Encoding.UTF8.GetBytes(LibraryText.Write(content)), at, cut, Encoding.UTF8.GetBytes(put));

        spoilt.Sample(
            bytes =>
            {
                var complaints = new ComplaintList();
                var read = LibraryText.Read(bytes, complaints);
                Assert.Equal(read is null, complaints.All.Count > 0);
            },
            iter: 400,
            threads: 1);
    }

    private static byte[] Spoil(byte[] bytes, double at, int cut, byte[] put)
    {
        var start = (int)(at * bytes.Length);
        return [.. bytes[..start], .. put, .. bytes[Math.Min(start + cut, bytes.Length)..]];
    }
}
