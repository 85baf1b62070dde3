namespace GigRig.Planning;

/// <summary>How the planner searches; what is asked of it lies in the problem. The same options and problem give the same choice unless time runs out.</summary>
public sealed record PlannerOptions
{
    public static PlannerOptions Default { get; } = new();

    /// <summary>Feeds every random choice.</summary>
    public int Seed { get; init; } = 20260101;

    /// <summary>How many nodes our own search through the sets may look at in its first turn, before the choosing model has its own; with 0 that has the whole question.</summary>
    public int SetNodes { get; init; } = 400_000;

    /// <summary>How many sets the choosing model may propose before it is given the geometry to reason with.</summary>
    public int RoundsBeforeGeometry { get; init; } = 12;

    /// <summary>With more devices than this to choose from, geometry in the choosing model costs more than it saves.</summary>
    public int MostPlacedTogether { get; init; } = 80;

    /// <summary>How many nodes our own search may look at for one question of fit before the solver is asked.</summary>
    public int FitNodes { get; init; } = 20_000;

    /// <summary>How long one question of fit may take before it is left open, in the solver's own seconds of work. Never read as a no.</summary>
    public TimeSpan FitBudget { get; init; } = TimeSpan.FromSeconds(2);

    /// <summary>
    /// How long the solver may take to say a no once more in another way, in its own seconds of work. Null: as long as for the first time. What is not said again is not said.
    /// </summary>
    public TimeSpan? ConfirmBudget { get; init; }

    /// <summary>How many states of outlets one question of power may look at before it is left open.</summary>
    public int PowerStates { get; init; } = UsualPowerStates;

    /// <summary>How long one test may take while a misfit set is made smaller, in the solver's own seconds of work.</summary>
    public TimeSpan ShrinkBudget { get; init; } = TimeSpan.FromMilliseconds(60);

    /// <summary>How many random orders the quick placer tries before a proof is sought.</summary>
    public int QuickTries { get; init; } = 60;

    /// <summary>After how many tries without a better layout the arranger stops.</summary>
    public int ArrangeTries { get; init; } = 800;

    /// <summary>Whether reasons and repairs are looked for, which means solving again.</summary>
    public bool Explain { get; init; } = true;

    /// <summary>What earlier questions taught. Null: this question starts from nothing.</summary>
    public PlanMemory? Memory { get; init; }

    /// <summary>Whether the first rule-clean rig will do.</summary>
    internal bool FirstWillDo { get; init; }

    internal const int UsualPowerStates = 300_000;

    /// <summary>Eight times the work for a single question of fit or power.</summary>
    internal PlannerOptions Harder() => this with { FitBudget = 8 * FitBudget, PowerStates = (int)Math.Min(8L * PowerStates, int.MaxValue) };
}
