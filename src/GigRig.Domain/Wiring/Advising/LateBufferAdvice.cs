using GigRig.Domain.Gear;

namespace GigRig.Domain.Wiring.Advising;

internal sealed class LateBufferAdvice : IAdvice
{
    private const int MostBare = 4;

    public string Id => AdviceIds.LateBuffer;

    public string Sentence => "No more than four true-bypass boxes stand before the first that buffers.";

    public string Basis => "Common practice: each adds about half a metre of cable, and the trouble begins with four or five. Players without a source; see the tone of the long lead for your own numbers.";

    public IEnumerable<Advice> About(SignalPath path)
    {
        if (path.Problem.Instrument is { Pickup.Active: true } or { Family: InstrumentFamily.Keyboard })
            yield break;
        var bare = path.Front.TakeWhile(stop => !stop.Buffers).ToList();
        if (bare.Count > MostBare)
            yield return new(Id, bare.Select(stop => stop.Id).ToValueList(), $"{bare.Count} true-bypass boxes stand between the pickup and {(path.Front.Any(stop => stop.Buffers) ? "the first that buffers" : "the amp, and none buffers")}: switched off, they dull the sound like a much longer lead. A buffered box early, behind any fuzz that wants the bare pickup, cures it.");
    }
}
