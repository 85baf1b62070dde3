using GigRig.Data;
using GigRig.Domain;
using GigRig.Domain.Gear;

namespace GigRig.Web.Guesses;

/// <summary>What is guessed of the owner's things as they are stored now, under the names they go by in problems and rigs.</summary>
public sealed class KnownGuesses(GearStore gear)
{
    public async Task<IReadOnlyDictionary<GearId, ValueList<Guess>>> LoadAsync(CancellationToken cancel = default)
    {
        var known = new Dictionary<GearId, ValueList<Guess>>();
        Note(await gear.DevicesAsync(cancel));
        Note(await gear.BoardsAsync(cancel));
        Note(await gear.SuppliesAsync(cancel));
        Note(await gear.LeadsAsync(cancel));
        Note(await gear.InstrumentsAsync(cancel));
        return known;

        void Note<T>(ValueList<Stored<OwnedGear<T>>> things)
            where T : class
        {
            foreach (var thing in things.Where(thing => thing.Item.Ownership.Guesses.Count > 0))
                known[Stored.GearIdOf(thing.Id)] = thing.Item.Ownership.Guesses;
        }
    }
}
