using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Units;

namespace GigRig.Domain.Guessing;

/// <summary>The little that is known of a supply: its outlets. The rest is filled in with what is usual, and marked.</summary>
public sealed record KnownOfSupply(string Name, ValueList<Outlet> Outlets)
{
    /// <summary>For a board to find it; with it the supply is taken to sit under the board, without it beside the board.</summary>
    public BodySize? Size { get; init; }

    public Grams? Mass { get; init; }

    /// <summary>Every outlet with a return of its own, and what else was guessed.</summary>
    public (Supply Supply, ValueList<Guess> Guesses) Fill(GearId id) => (
        new(id, Name, Mass ?? 500.G, Size is null ? SupplyMount.Off : SupplyMount.Under, Size, Outlets),
        GuessList.Of((Guess.Mass, Mass is null), (Guess.Mount, true), (Guess.Returns, true)));
}
