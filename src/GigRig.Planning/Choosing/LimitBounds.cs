namespace GigRig.Planning.Choosing;

/// <summary>The event's and the board's limits, as far as devices add up to them.</summary>
internal static class LimitBounds
{
    public static IEnumerable<Bound> Of(Question question)
    {
        var (problem, candidates) = (question.Problem, question.Candidates);
        long[] masses = [.. candidates.Select(c => (long)c.Device.Mass.Value)];
        if (problem.Event.Limits.Devices is { } devices)
            yield return new([.. candidates.Select(_ => 1L)], devices);
        if (problem.Event.Limits.Mass is { } mass)
            yield return new([.. masses, .. question.OffBoard.Select(i => (long)i.Mass.Value)], mass.Value - question.FixedMass);
        if (problem.Board.MaxLoad is { } load)
            yield return new(masses, load.Value - (problem.Supply is { Mount: not Domain.Gear.SupplyMount.Off } mounted ? mounted.Mass.Value : 0));
        if (problem.Event.Limits.FreeArea is { } free)
            yield return new([.. candidates.Select(c => 100L * c.Shape.BodyArea)], ((100 - free) * (long)question.Surface.Width * question.Surface.Depth) - (100L * (question.SupplyShape?.BodyArea ?? 0)));
    }
}
