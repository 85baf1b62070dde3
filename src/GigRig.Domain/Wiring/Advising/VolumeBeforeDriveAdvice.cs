using GigRig.Domain.Rules;

namespace GigRig.Domain.Wiring.Advising;

internal sealed class VolumeBeforeDriveAdvice : IAdvice
{
    public string Id => AdviceIds.VolumeBeforeDrive;

    public string Sentence => "A volume pedal stands behind the drives.";

    public string Basis => "Common practice: before them it acts like the guitar's own knob, less drive instead of less loud. Many want just that.";

    public IEnumerable<Advice> About(SignalPath path)
    {
        foreach (var volume in path.Stops.Where(stop => stop.Plays("volume")))
            if (path.After(volume).Where(stop => stop.Plays("drive")).ToList() is { Count: > 0 } drives)
                yield return new(Id, [volume.Id, .. drives.Select(stop => stop.Id)], $"{volume.Name} before {drives.Select(stop => stop.Name).Listed()} acts like the guitar's own knob: less drive rather than less loud. To fade a finished sound, put it behind the drives.");
    }
}
