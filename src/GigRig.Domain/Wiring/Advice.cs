using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;

namespace GigRig.Domain.Wiring;

/// <summary>Something about a rig that usually sounds or works worse than it could. Never a refusal: players do most of it on purpose.</summary>
/// <param name="Id">Of the advice it is a case of, a row of docs/wiring.md.</param>
/// <param name="Culprits">The things it is about, those the sentence names.</param>
/// <param name="Sentence">For the musician: what happens, and what to do.</param>
public sealed record Advice(string Id, ValueList<GearId> Culprits, string Sentence);

/// <summary>Advice as a page shows it.</summary>
/// <param name="Silenced">What the musician answered; null where it still speaks.</param>
public sealed record HeardAdvice(Advice Advice, SilencedAdvice? Silenced);

/// <summary>One kind of advice. One class, one file, one row in docs/wiring.md.</summary>
internal interface IAdvice
{
    string Id { get; }

    /// <summary>What it speaks of, in one sentence.</summary>
    string Sentence { get; }

    /// <summary>Where it comes from.</summary>
    string Basis { get; }

    IEnumerable<Advice> About(SignalPath path);
}
