using GigRig.Domain.Gear;
using GigRig.Domain.Units;

namespace GigRig.Domain.Guessing;

/// <summary>The little that is known of a board: how large it is. The rest is filled in with what is usual, and marked.</summary>
public sealed record KnownOfBoard(string Name, Millimetres Width, Millimetres Depth)
{
    /// <summary>Square millimetres of a board that weigh a gram: 2 g for each square centimetre. A rule of thumb of ours.</summary>
    private const int AreaOfAGram = 50;

    public Grams? Mass { get; init; }

    /// <summary>A plain surface and what of it was guessed.</summary>
    public (Board Board, ValueList<Guess> Guesses) Fill(GearId id)
    {
        var usual = (int)Math.Min((long)Width.Value * Depth.Value / AreaOfAGram, int.MaxValue);
        return (
            new(id, Name, Width, Depth, Mass ?? usual.G, [], [], Overhang.Usual),
            GuessList.Of((Guess.Mass, Mass is null), (Guess.Surface, true), (Guess.Overhang, true)));
    }
}
