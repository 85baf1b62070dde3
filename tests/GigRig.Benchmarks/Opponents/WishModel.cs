using GigRig.Domain;
using GigRig.Domain.Events;
using GigRig.Domain.Gear;
using Google.OrTools.Sat;

namespace GigRig.Benchmarks.Opponents;

/// <summary>Needs and sounds: each need is given to at most one function, each sound to functions that can be on at once. The same for both opponents.</summary>
internal sealed class WishModel
{
    private readonly Belongings belongings;
    private readonly List<(BoolVar Holds, int Weight)> wants = [];
    private readonly List<(BoolVar Holds, int Rating)> ratings = [];

    public WishModel(Belongings belongings)
    {
        this.belongings = belongings;
        foreach (var need in belongings.Problem.Event.Needs)
            AddNeed(need);
        foreach (var sound in belongings.Problem.Event.Sounds)
            AddSound(sound);
        MostWants = belongings.Problem.Event.Needs.Where(n => n.Level == NeedLevel.Want).Sum(n => (long)n.Weight)
            + belongings.Problem.Event.Sounds.Where(s => s.Level == NeedLevel.Want).Sum(s => (long)s.Weight);
        MostRating = 5L * belongings.Problem.Event.Needs.Count;
    }

    public LinearExpr Wants => LinearExpr.WeightedSum(wants.Select(w => w.Holds), wants.Select(w => w.Weight));

    public LinearExpr Rating => LinearExpr.WeightedSum(ratings.Select(r => r.Holds), ratings.Select(r => r.Rating));

    public long MostWants { get; }

    public long MostRating { get; }

    private CpModel Model => belongings.Model;

    private void AddNeed(Need need)
    {
        var covers = new List<BoolVar>();
        foreach (var (thing, function, taken) in belongings.Functions.Where(f => f.Function.Role.Meets(need.Role)))
        {
            var cover = Model.NewBoolVar($"{thing} covers {need.Role}");
            Model.AddImplication(cover, taken);
            covers.Add(cover);
            ratings.Add((cover, function.Rating));
            if (need.Level == NeedLevel.Want)
                wants.Add((cover, need.Weight));
        }

        if (need.Level == NeedLevel.Want)
            Model.AddAtMostOne(covers);
        else if (covers.Count > 0)
            Model.AddExactlyOne(covers);
        else
            belongings.Refuse();
    }

    private void AddSound(Sound sound)
    {
        var playable = belongings.Always;
        if (sound.Level == NeedLevel.Want)
        {
            playable = Model.NewBoolVar(sound.Name);
            wants.Add((playable, sound.Weight));
        }

        var on = new List<(BoolVar On, RoleFunction Function)>();
        foreach (var section in Sections(sound))
        {
            var literals = section.Select(f => (On: section.Length == 1 ? f.Taken : Switched(f.Taken), f.Function)).ToList();
            if (section.Length > 1)
                Model.AddAtMostOne(literals.Select(l => l.On));
            on.AddRange(literals);
        }

        foreach (var role in sound.Roles)
            Model.AddBoolOr(on.Where(f => f.Function.Role.Meets(role)).Select(f => (ILiteral)f.On).Append(playable.Not()));
    }

    /// <summary>The functions a sound can use, those that are either/or together.</summary>
    private IEnumerable<(RoleFunction Function, BoolVar Taken)[]> Sections(Sound sound) =>
        belongings.Functions
            .Where(f => sound.Roles.Any(role => f.Function.Role.Meets(role)))
            .Select((f, index) => (f.Thing, f.Function, f.Taken, Own: f.Function.Section is null ? index : -1))
            .GroupBy(f => (f.Thing, f.Function.Section, f.Own), f => (f.Function, f.Taken))
            .Select(section => section.ToArray());

    private BoolVar Switched(BoolVar taken)
    {
        var on = Model.NewBoolVar("on");
        Model.AddImplication(on, taken);
        return on;
    }
}
