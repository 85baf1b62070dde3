using GigRig.Domain.Rules;

namespace GigRig.Domain.Wiring.Advising;

internal sealed class CompressorAfterDriveAdvice : IAdvice
{
    public string Id => AdviceIds.CompressorAfterDrive;

    public string Sentence => "A compressor stands before the drives, fuzz aside.";

    public string Basis => "Common practice: before them it steadies what feeds them, after them it lifts their noise.";

    public IEnumerable<Advice> About(SignalPath path)
    {
        foreach (var compressor in path.Stops.Where(stop => stop.Plays("compressor")))
            if (path.Before(compressor).Where(DrivesAndIsNoFuzz).ToList() is { Count: > 0 } drives)
                yield return new(Id, [compressor.Id, .. drives.Select(stop => stop.Id)], $"{compressor.Name} behind {drives.Select(stop => stop.Name).Listed()} lifts the noise of the drive between the notes. Before it, it would steady what feeds it.");
    }

    // A fuzz belongs next to the pickup, so a compressor is behind it all the same.
    private static bool DrivesAndIsNoFuzz(PathStop stop) => stop.Roles.Any(role => role.Meets(new("drive")) && !role.Meets(new("drive.fuzz")));
}
