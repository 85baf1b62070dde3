using GigRig.Domain;
using Google.OrTools.Sat;

namespace GigRig.Planning.Choosing;

/// <summary>What the event and the board allow in numbers, and the things that must come along.</summary>
internal static class LimitParts
{
    public static void Add(ChoiceVariables variables)
    {
        var question = variables.Question;
        var limits = question.Problem.Event.Limits;
        if (limits.Mass is { } mass)
            variables.Model.Add(Mass(variables) <= mass.Value - question.FixedMass);
        if (limits.Devices is { } devices)
            variables.Model.Add(LinearExpr.Sum(variables.Devices) <= devices);
        AddLoad(variables);
        AddFreeArea(variables);
        AddPins(variables);
    }

    /// <summary>Grams of what is chosen.</summary>
    public static LinearExpr Mass(ChoiceVariables variables) =>
        LinearExpr.WeightedSum(variables.Devices, variables.Question.Candidates.Select(c => c.Device.Mass.Value))
        + LinearExpr.WeightedSum(variables.OffBoard, variables.Question.OffBoard.Select(i => i.Mass.Value));

    private static void AddLoad(ChoiceVariables variables)
    {
        var problem = variables.Question.Problem;
        if (problem.Board.MaxLoad is not { } most)
            return;
        var supply = problem.Supply is { Mount: not Domain.Gear.SupplyMount.Off } mounted ? mounted.Mass.Value : 0;
        variables.Model.Add(LinearExpr.WeightedSum(variables.Devices, variables.Question.Candidates.Select(c => c.Device.Mass.Value)) <= most.Value - supply);
    }

    private static void AddFreeArea(ChoiceVariables variables)
    {
        var question = variables.Question;
        if (question.Problem.Event.Limits.FreeArea is not { } free)
            return;
        long area = (long)question.Surface.Width * question.Surface.Depth;
        variables.Model.Add(
            LinearExpr.WeightedSum(variables.Devices, question.Candidates.Select(c => 100L * c.Shape.BodyArea)) <= ((100 - free) * area) - (100L * (question.SupplyShape?.BodyArea ?? 0)));
    }

    private static void AddPins(ChoiceVariables variables)
    {
        var question = variables.Question;
        var options = question.Problem.Options;
        foreach (var pin in options.Pin.Concat(options.Fixed.Select(place => place.Id)).Distinct())
        {
            if (pin == question.Problem.Amp?.Id || pin == question.Problem.Supply?.Id)
                continue;
            var device = Array.FindIndex(question.Candidates, c => c.Id == pin);
            var item = Array.FindIndex(question.OffBoard, i => i.Id == pin);
            ILiteral? literal = device >= 0 ? variables.Devices[device] : item >= 0 ? variables.OffBoard[item] : null;

            // A pinned thing that can never come along leaves nothing to choose.
            variables.Model.AddBoolOr(literal is null ? [variables.Always.Not()] : [literal]);
        }
    }
}
