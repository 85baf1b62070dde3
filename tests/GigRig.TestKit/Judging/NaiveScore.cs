using GigRig.Domain.Events;
using GigRig.Domain.Rigs;

namespace GigRig.TestKit.Judging;

/// <summary>The first four tiers, counted a second time: weight of covered wants, sum of ratings, devices on the board, grams carried.</summary>
public sealed record NaiveScore(long Wants, int Rating, int Devices, int Mass)
{
    public static NaiveScore Of(RigProblem problem, Rig rig)
    {
        var functions = NaiveMusic.Functions(problem, rig);
        long wants = 0;
        var rating = 0;
        foreach (var need in problem.Event.Needs)
        {
            var best = NaiveMusic.BestRating(need.Role.Key, functions);
            rating += best;
            if (best > 0 && need.Level == NeedLevel.Want)
                wants += need.Weight;
        }

        foreach (var sound in problem.Event.Sounds)
            if (sound.Level == NeedLevel.Want && NaiveMusic.CanSound([.. sound.Roles.Select(r => r.Key)], functions, []))
                wants += sound.Weight;
        return new(wants, rating, NaiveBelongings.PlacedDevices(problem, rig).Count, NaiveBelongings.Mass(problem, rig));
    }
}
