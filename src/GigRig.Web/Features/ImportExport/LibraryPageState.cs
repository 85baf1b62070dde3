using GigRig.Data;
using GigRig.Data.Files;

namespace GigRig.Web.Features.ImportExport;

/// <summary>A library file on its way in: looked at first, imported on the owner's word.</summary>
public sealed class LibraryPageState(LibraryFile file)
{
    public string FileName { get; private set; } = "";

    /// <summary>What importing would do; null while no file was chosen.</summary>
    public ImportPreview? Preview { get; private set; }

    /// <summary>What was done last, in words.</summary>
    public string Done { get; private set; } = "";

    /// <summary>Why nothing was done, in words.</summary>
    public string Fault { get; private set; } = "";

    /// <param name="open">Opens it. Fails where it is larger than is read.</param>
    public async Task LookAtAsync(string name, Func<Stream> open, CancellationToken cancel = default)
    {
        Clear();
        try
        {
            await using var content = open();
            Preview = await file.PreviewAsync(content, cancel);
            FileName = name;
        }
        catch (IOException fault)
        {
            // The browser stopped sending, or the file is larger than it may send.
            Fault = $"{name} could not be read. {fault.Message}";
        }
    }

    public async Task ImportAsync()
    {
        if (Preview is not { CanImport: true } preview)
            return;
        Fault = "";
        try
        {
            await file.ImportAsync(preview);
            var name = FileName;
            Clear();
            Done = $"Imported {name}: {preview.Added} added, {preview.Changed} changed, {preview.Same} left as they were.";
        }
        catch (LibraryChangedException changed)
        {
            Clear();
            Fault = changed.Message;
        }
        catch (NotWrittenException notWritten)
        {
            // The preview stays: once there is room, the same click will do.
            Fault = notWritten.Message;
        }
    }

    public void Clear()
    {
        (FileName, Preview, Done, Fault) = ("", null, "", "");
    }
}
