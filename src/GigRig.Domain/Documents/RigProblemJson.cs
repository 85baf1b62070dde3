using System.Text.Json;
using GigRig.Domain.Documents.Reading;
using GigRig.Domain.Rigs;

namespace GigRig.Domain.Documents;

/// <summary>Reads and writes <c>rig-problem/1</c>.</summary>
public static class RigProblemJson
{
    /// <summary>Every complaint about the text and about what it asks, at once. Never throws on what the text says.</summary>
    public static ProblemCheck Read(string json) => Read(options => JsonDocument.Parse(json, options));

    /// <inheritdoc cref="Read(string)"/>
    /// <param name="utf8">Read to its end; not closed.</param>
    public static ProblemCheck Read(Stream utf8) => Read(options => JsonDocument.Parse(utf8, options));

    /// <summary>Reads back as an equal problem.</summary>
    public static string Write(RigProblem problem) => Write(problem.Draft);

    /// <inheritdoc cref="Write(RigProblem)"/>
    public static string Write(RigProblemDraft draft) => JsonSerializer.Serialize(RigProblemDocument.Of(draft), DocumentJson.Indented);

    private static ProblemCheck Read(Func<JsonDocumentOptions, JsonDocument> parse)
    {
        var (document, list) = DocumentReader.Read<RigProblemDocument>(parse, RigProblemDocument.FormatWord);
        if (document is null)
            return new ProblemCheck.Refused(list.Complaints);
        return (RigProblem.Create(document.ToDraft()), list.Complaints) switch
        {
            (ProblemCheck.Refused refused, var read) => new ProblemCheck.Refused([.. read, .. refused.Complaints]),
            (_, { Count: > 0 } read) => new ProblemCheck.Refused(read),
            (var accepted, _) => accepted,
        };
    }
}
