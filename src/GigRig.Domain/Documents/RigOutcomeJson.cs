using System.Text.Json;
using GigRig.Domain.Rigs;

namespace GigRig.Domain.Documents;

/// <summary>Writes <c>rig-outcome/1</c>.</summary>
public static class RigOutcomeJson
{
    /// <param name="problem">The one that was asked; it names the amp.</param>
    public static string Write(PlanOutcome outcome, RigProblem problem) =>
        JsonSerializer.Serialize(RigOutcomeDocument.Of(outcome, problem), DocumentJson.Indented);
}
