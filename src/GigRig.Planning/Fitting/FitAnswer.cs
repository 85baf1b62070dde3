namespace GigRig.Planning.Fitting;

/// <summary>Whether a set of things can stand together.</summary>
internal abstract record FitAnswer
{
    private FitAnswer()
    {
    }

    /// <summary>Yes, like this. <see cref="Standing.Item"/> is the position in the set asked about.</summary>
    public sealed record Stands(IReadOnlyList<Standing> Standings) : FitAnswer;

    /// <summary>Proved: these of them, by their positions in the set asked about, can never stand together. Without any one of them they can, or the row is not too long, or there was no time to tell.</summary>
    /// <param name="RowExcess">Where a row alone proves it: by how many millimetres that is too long however they are turned.</param>
    public sealed record Misfit(IReadOnlyList<int> Items, int? RowExcess) : FitAnswer;

    /// <summary>Time ran out. Never to be read as a no.</summary>
    public sealed record Open : FitAnswer;
}
