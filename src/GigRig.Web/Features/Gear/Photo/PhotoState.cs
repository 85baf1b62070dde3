using GigRig.Data;

namespace GigRig.Web.Features.Gear.Photo;

/// <summary>The photo of one stored thing. Choosing and removing are saved at once, apart from what is typed about the thing.</summary>
public sealed class PhotoState(GearPhotoStore photos)
{
    private Guid gearId;
    private DateTime? savedUtc;

    /// <summary>Address of the photo; null while there is none.</summary>
    public string? Url => savedUtc is { } saved ? GigRigUrls.GearPhoto(gearId, saved) : null;

    /// <summary>Why the file chosen last was not taken, in words.</summary>
    public string Fault { get; private set; } = "";

    public async Task LoadAsync(Guid gear)
    {
        (gearId, Fault) = (gear, "");
        savedUtc = await photos.SavedUtcAsync(gear);
    }

    /// <summary>Takes a chosen file in. What went wrong is in <see cref="Fault"/>; the photo there was is then still there.</summary>
    /// <returns>Whether it was taken, and the photo it replaced, to undo that.</returns>
    public async Task<(bool Taken, GearPhoto? Before)> ChooseAsync(string name, long bytes, Func<Stream> open, CancellationToken cancel = default)
    {
        Fault = "";
        switch (await ReadAsync(name, bytes, open, cancel))
        {
            case PhotoRead.Accepted accepted:
                var before = await photos.PutAsync(gearId, new(accepted.Jpeg, PhotoReader.ContentType), cancel);
                savedUtc = await photos.SavedUtcAsync(gearId, cancel);
                return (true, before);
            case PhotoRead.Refused refused:
                Fault = refused.Why;
                break;
        }

        return (false, null);
    }

    /// <summary>Takes the photo away and gives it back, to undo that. Null where there was none.</summary>
    public async Task<GearPhoto?> RemoveAsync()
    {
        var removed = await photos.RemoveAsync(gearId);
        (savedUtc, Fault) = (null, "");
        return removed;
    }

    /// <summary>Undoes: the thing has this photo again, or none.</summary>
    public async Task PutBackAsync(GearPhoto? before)
    {
        if (before is null)
            await photos.RemoveAsync(gearId);
        else
            await photos.PutAsync(gearId, before);
        await LoadAsync(gearId);
    }

    private static async Task<PhotoRead> ReadAsync(string name, long bytes, Func<Stream> open, CancellationToken cancel)
    {
        if (bytes > PhotoReader.MostBytes)
            return PhotoReader.TooLarge(name, bytes);
        try
        {
            using var kept = new MemoryStream((int)bytes);
            await using (var stream = open())
                await stream.CopyToAsync(kept, cancel);
            // A large picture takes a while; the page answers meanwhile.
            return await Task.Run(() => PhotoReader.Read(name, kept.ToArray()), cancel);
        }
        catch (IOException fault)
        {
            return new PhotoRead.Refused($"{name} could not be read: {fault.Message} Choose it again.");
        }
    }
}
