using System.ComponentModel;
using GigRig.Domain.Rigs;
using Microsoft.AspNetCore.Http.HttpResults;

namespace GigRig.Web.Api;

/// <summary>Problem details (RFC 9457) of a document that can't be planned with.</summary>
[Description("Why the document was refused: every fault, not only the first.")]
public sealed record RefusedProblem(string Type, string Title, int Status, string Detail, IReadOnlyList<RefusedMember> Errors);

/// <param name="Pointer">JSON Pointer (RFC 6901) to the member.</param>
/// <param name="Value">What was given, as text.</param>
/// <param name="Limit">What is allowed.</param>
/// <param name="Detail">One sentence with what to do.</param>
public sealed record RefusedMember(string Pointer, string Value, string Limit, string Detail);

/// <summary>The ways the API says no.</summary>
internal static class Refusals
{
    /// <summary>The types are names, not addresses; they never change.</summary>
    private const string TypePrefix = "urn:fit-for-the-gig:";

    public static JsonHttpResult<RefusedProblem> Refused(ProblemCheck.Refused refused) => TypedResults.Json(
        new RefusedProblem(
            TypePrefix + "problem-refused",
            "This problem can't be planned with",
            StatusCodes.Status400BadRequest,
            refused.Complaints.Count == 1 ? refused.Complaints[0].Message : $"{refused.Complaints.Count} faults were found; see errors.",
            [.. refused.Complaints.Select(complaint => new RefusedMember(complaint.Path, complaint.Value, complaint.Limit, complaint.Message))]),
        contentType: System.Net.Mime.MediaTypeNames.Application.ProblemJson,
        statusCode: StatusCodes.Status400BadRequest);

    public static ProblemHttpResult TooLarge() => TypedResults.Problem(
        type: TypePrefix + "too-large",
        title: "The document is too large",
        detail: $"The body is larger than {BoundedBody.Most} bytes, the most a problem may have. Send fewer devices.",
        statusCode: StatusCodes.Status413PayloadTooLarge);

    public static ProblemHttpResult OnlyPost(HttpResponse response)
    {
        response.Headers.Allow = HttpMethods.Post;
        return TypedResults.Problem(
            type: TypePrefix + "only-post",
            title: "A problem has to be sent",
            detail: $"Send a rig-problem/1 document with POST; its members are described at {GigRigUrls.ApiSchema}.",
            statusCode: StatusCodes.Status405MethodNotAllowed);
    }

    public static ProblemHttpResult Busy() => TypedResults.Problem(
        type: TypePrefix + "busy",
        title: "Too many plans are waiting",
        detail: "Nothing was tried. Send the problem again after the time that Retry-After names.",
        statusCode: StatusCodes.Status503ServiceUnavailable);
}
