using GigRig.Domain;
using GigRig.Domain.Events;
using GigRig.Domain.Gear;
using Google.OrTools.Sat;

namespace GigRig.Planning.Choosing;

/// <summary>Needs and sounds: musts hold, wants and ratings become terms of the objective.</summary>
internal sealed class CoverageParts
{
    private readonly ChoiceVariables variables;

    public CoverageParts(ChoiceVariables variables)
    {
        this.variables = variables;
        foreach (var need in variables.Question.Problem.Event.Needs)
            AddNeed(need);
        foreach (var sound in variables.Question.Problem.Event.Sounds)
            AddSound(sound);
    }

    /// <summary>Covered wants with their weights.</summary>
    public List<(ILiteral Covered, int Weight)> Wants { get; } = [];

    /// <summary>One literal for each step of rating reached.</summary>
    public List<ILiteral> RatingSteps { get; } = [];

    private CpModel Model => variables.Model;

    private void AddNeed(Need need)
    {
        var able = variables.Question.Functions.Where(f => f.Function.Role.Meets(need.Role)).ToArray();
        if (need.Level == NeedLevel.Must)
            Model.AddBoolOr(able.Select(f => variables.Takes(f.Performer)).Append(variables.Always.Not()));
        if (able.Length == 0)
            return;
        ILiteral? below = null;
        for (var rating = 1; rating <= able.Max(f => f.Function.Rating); rating++)
        {
            var reached = Model.NewBoolVar($"{need.Role} at {rating}");
            Model.AddBoolOr(able.Where(f => f.Function.Rating >= rating).Select(f => variables.Takes(f.Performer)).Append(reached.Not()));
            if (below is not null)
                Model.AddImplication(reached, below);
            else if (need.Level == NeedLevel.Want)
                Wants.Add((reached, need.Weight));
            RatingSteps.Add(reached);
            below = reached;
        }
    }

    private void AddSound(Sound sound)
    {
        var covered = sound.Level == NeedLevel.Must ? variables.Always : Model.NewBoolVar($"sound {sound.Name}");
        if (sound.Level == NeedLevel.Want)
            Wants.Add((covered, sound.Weight));
        var able = variables.Question.Functions
            .Where(f => sound.Roles.Any(role => f.Function.Role.Meets(role)))
            .Select((f, i) => (f.Performer, f.Function, Section: (f.Performer, f.Function.Section, f.Function.Section is null ? i : -1)))
            .ToArray();
        var on = new List<(ILiteral On, RoleFunction Function)>();
        foreach (var section in able.GroupBy(f => f.Section))
        {
            // Only a section with a choice to make at this moment needs literals of its own.
            var switched = section.Count() > 1;
            var literals = section.Select(f => (On: switched ? Switched(f.Performer, $"{sound.Name}: {f.Function.Role}") : variables.Takes(f.Performer), f.Function)).ToArray();
            if (switched)
                Model.AddAtMostOne(literals.Select(l => l.On));
            on.AddRange(literals);
        }

        foreach (var role in sound.Roles)
            Model.AddBoolOr(on.Where(f => f.Function.Role.Meets(role)).Select(f => f.On).Append(covered.Not()));
    }

    private ILiteral Switched(Performer performer, string name)
    {
        var on = Model.NewBoolVar(name);
        Model.AddImplication(on, variables.Takes(performer));
        return on;
    }
}
