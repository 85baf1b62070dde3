using GigRig.Domain.Rules;

namespace GigRig.Domain.Wiring.Advising;

internal sealed class EchoBeforeDriveAdvice : IAdvice
{
    public string Id => AdviceIds.EchoBeforeDrive;

    public string Sentence => "Delay and reverb stand behind the drives on the board.";

    public string Basis => "Common practice: before a drive each repeat is driven again and smears. Some noise styles want that.";

    public IEnumerable<Advice> About(SignalPath path)
    {
        foreach (var echo in path.Stops.Where(stop => stop.Plays("delay") || stop.Plays("reverb")))
            if (path.After(echo).Where(stop => stop.Plays("drive")).ToList() is { Count: > 0 } drives)
                yield return new(Id, [echo.Id, .. drives.Select(stop => stop.Id)], $"{echo.Name} before {drives.Select(stop => stop.Name).Listed()}: each repeat is driven again and smears. Behind it repeats stay clear.");
    }
}
