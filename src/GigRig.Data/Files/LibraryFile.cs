using GigRig.Domain.Rigs;
using Microsoft.EntityFrameworkCore;

namespace GigRig.Data.Files;

/// <summary>The whole library as one text file, <c>gig-library/1</c>, out and in again. Share links stay behind: they can't be read back.</summary>
public sealed class LibraryFile
{
    /// <summary>The largest file that is read: 100 MB. Reading takes about fifteen times as much memory for a moment.</summary>
    public const int MaxBytes = 100_000_000;

    private readonly IDbContextFactory<GigRigDb> databases;
    private readonly TimeProvider time;

    internal LibraryFile(IDbContextFactory<GigRigDb> databases, TimeProvider time) => (this.databases, this.time) = (databases, time);

    /// <summary>The library as it is now. The same library always gives the same text.</summary>
    /// <exception cref="UnreadableRigException">A stored rig can't be read; a file without it would be no copy.</exception>
    /// <exception cref="LibraryTooLargeException">It would be larger than what can be read in again.</exception>
    public async Task<string> ExportAsync(CancellationToken cancel = default)
    {
        await using var db = await databases.CreateDbContextAsync(cancel);
        var content = await LibrarySnapshot.ReadAsync(db, cancel);
        LibraryTooLargeException.Require(content);
        var text = LibraryText.Write(content);
        LibraryTooLargeException.Require(text);
        return text;
    }

    /// <summary>Reads a file and says what importing it would do. Writes nothing.</summary>
    public async Task<ImportPreview> PreviewAsync(Stream file, CancellationToken cancel = default)
    {
        if (await ReadAsync(file, cancel) is not { } bytes)
            return ImportPreview.Refused([TooLarge]);
        var complaints = new ComplaintList();
        if (LibraryText.Read(bytes, complaints) is not { } content)
            return ImportPreview.Refused(complaints.All);
        await using var db = await databases.CreateDbContextAsync(cancel);
        return await LibraryMerge.ApplyAsync(db, content, time, cancel);
    }

    /// <summary>Does what the preview said: all of it, or nothing.</summary>
    /// <exception cref="LibraryChangedException">The library was changed since the preview was made.</exception>
    /// <exception cref="NotWrittenException">The disk did not take it. Nothing was imported.</exception>
    /// <exception cref="ArgumentException">The preview refused the file.</exception>
    public async Task ImportAsync(ImportPreview preview, CancellationToken cancel = default)
    {
        if (!preview.CanImport || preview.Content is not { } content)
            throw new ArgumentException("This file was refused. Mend what the preview complains of first.", nameof(preview));
        await using var db = await databases.CreateDbContextAsync(cancel);
        var now = await LibraryMerge.ApplyAsync(db, content, time, cancel);
        if (now.Lines != preview.Lines)
            throw new LibraryChangedException();
        try
        {
            await db.SaveChangesAsync(cancel);
        }
        catch (DbUpdateConcurrencyException)
        {
            throw new LibraryChangedException();
        }
    }

    private static Complaint TooLarge { get; } =
        new("", $"more than {MaxBytes} bytes", $"{MaxBytes} bytes", $"The file is larger than {MaxBytes / 1_000_000} MB. Import it in parts, or check that it is a library file.");

    private static async Task<ReadOnlyMemory<byte>?> ReadAsync(Stream file, CancellationToken cancel)
    {
        using var bytes = new MemoryStream();
        var buffer = new byte[81_920];
        int read;
        while ((read = await file.ReadAsync(buffer, cancel)) > 0)
        {
            if (bytes.Length + read > MaxBytes)
                return null;
            bytes.Write(buffer, 0, read);
        }

        return bytes.GetBuffer().AsMemory(0, (int)bytes.Length);
    }
}

/// <summary>The library was changed between the preview of an import and the import. Nothing was imported.</summary>
public sealed class LibraryChangedException() : Exception("The library was changed since the preview was made, so nothing was imported. Look at a new preview, then import.");
