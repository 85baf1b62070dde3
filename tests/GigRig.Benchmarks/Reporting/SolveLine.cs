using System.Text.Json;
using System.Text.Json.Serialization;
using GigRig.Benchmarks.Measuring;
using GigRig.Benchmarks.Problems;
using GigRig.Domain;
using GigRig.Domain.Documents;
using GigRig.Domain.Documents.Outcome;
using GigRig.Domain.Rigs;

namespace GigRig.Benchmarks.Reporting;

/// <summary>One line of JSON about one problem solved.</summary>
internal sealed record SolveLine
{
    private static readonly JsonSerializerOptions Options = new(JsonSerializerDefaults.Web)
    {
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
        Converters = { new JsonStringEnumConverter(JsonNamingPolicy.CamelCase) },
    };

    public required string File { get; init; }

    public required OutcomeStatus Status { get; init; }

    public required bool Proven { get; init; }

    public ScoreDocument? Score { get; init; }

    public long? Bound { get; init; }

    public required double ElapsedMs { get; init; }

    public required double CpuMs { get; init; }

    public required long PeakMemoryMb { get; init; }

    public IReadOnlyList<SpotLine>? Placements { get; init; }

    public PublishedAnswer? Published { get; init; }

    /// <summary>Whether the answer is the published one; absent where nothing is published.</summary>
    public bool? Reached { get; init; }

    /// <summary>Whether it claims what cannot be where the published answer holds. Running out of time is no contradiction.</summary>
    [JsonIgnore]
    public bool Contradicts => Published switch
    {
        { Optimum: { } optimum } => Status == OutcomeStatus.Impossible || Score?.Wants > optimum || Bound < optimum || (Proven && Reached == false),
        { Fits: { } fits } => Status == (fits ? OutcomeStatus.Impossible : OutcomeStatus.Proposed),
        _ => false,
    };

    public static SolveLine Of(NamedProblem asked, Measured<PlanOutcome> measured)
    {
        var document = RigOutcomeDocument.Of(measured.Result, asked.Problem);
        return new()
        {
            File = asked.Name,
            Status = document.Status,
            Proven = document.Proven,
            Score = document.Score,
            Bound = document.Bound,
            ElapsedMs = Math.Round(measured.Wall.TotalMilliseconds, 1),
            CpuMs = Math.Round(measured.Cpu.TotalMilliseconds, 1),
            PeakMemoryMb = measured.PeakBytes >> 20,
            Placements = (measured.Result as PlanOutcome.Proposed)?.Best.Rig.Placements.Select(SpotLine.Of).ToList(),
            Published = asked.Published,
            Reached = asked.Published is { } published ? IsReached(published, document) : null,
        };
    }

    public string ToJson() => JsonSerializer.Serialize(this, Options);

    /// <summary>The line for a text that asks nothing that makes sense.</summary>
    public static string Refused(string file, ValueList<Complaint> complaints) => JsonSerializer.Serialize(new { file, status = "refused", complaints }, Options);

    private static bool IsReached(PublishedAnswer published, RigOutcomeDocument document) => published switch
    {
        { Optimum: { } optimum } => document.Score?.Wants == optimum,
        { Fits: true } => document.Status == OutcomeStatus.Proposed,
        _ => document.Status == OutcomeStatus.Impossible,
    };
}

/// <summary>Where one device stands.</summary>
internal sealed record SpotLine(string Id, int X, int Y, int Turn)
{
    public static SpotLine Of(Placement placement) => new(placement.Id.Value, placement.At.X.Value, placement.At.Y.Value, (int)placement.Turn);
}
