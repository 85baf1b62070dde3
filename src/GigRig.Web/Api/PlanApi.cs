using System.Net.Mime;
using GigRig.Domain.Documents;
using GigRig.Domain.Rigs;
using GigRig.Web.Queue;

namespace GigRig.Web.Api;

/// <summary>
/// The planner for other programs: a problem in, an outcome out, both as published documents. Stores nothing and reads nothing of the library.
/// </summary>
/// <remarks>
/// No token against forged requests is asked for: there is no cookie or login a foreign page could borrow, only JSON is taken, which a page of
/// another site can't send without asking first and no such question is ever granted, and a foreign origin is turned away before it gets here.
/// </remarks>
internal static class PlanApi
{
    public static void MapPlanApi(this IEndpointRouteBuilder routes)
    {
        routes.MapPost(GigRigUrls.ApiPlan, PlanAsync)
            .WithName("plan")
            .WithSummary("Plan a rig")
            .WithDescription(
                "Takes a rig-problem/1 document and answers with a rig-outcome/1 document: proposed, impossible with the reason, or undecided. "
                + $"Runs for at most the problem's own time limit; closing the connection ends it. The exact limits of each member are in the schema at {GigRigUrls.ApiSchema}.")
            .Accepts<RigProblemDocument>(MediaTypeNames.Application.Json)
            .Produces<RigOutcomeDocument>()
            .Produces<RefusedProblem>(StatusCodes.Status400BadRequest, MediaTypeNames.Application.ProblemJson)
            .ProducesProblem(StatusCodes.Status413PayloadTooLarge)
            .ProducesProblem(StatusCodes.Status415UnsupportedMediaType)
            .ProducesProblem(StatusCodes.Status503ServiceUnavailable)
            .DisableAntiforgery();
        // Otherwise the pages' own "nothing here" would answer whoever looks at the address with a browser.
        routes.MapMethods(GigRigUrls.ApiPlan, [HttpMethods.Get, HttpMethods.Head], (HttpResponse response) => Refusals.OnlyPost(response)).ExcludeFromDescription();
        routes.MapGet(GigRigUrls.ApiSchema, () => TypedResults.Text(RigProblemSchema.Text, "application/schema+json"))
            .WithName("rig-problem-schema")
            .WithSummary("The JSON Schema of rig-problem/1")
            .Produces<string>(contentType: "application/schema+json");
    }

    private static async Task<IResult> PlanAsync(HttpRequest request, PlanQueue queue, CancellationToken cancel)
    {
        if (await BoundedBody.ReadAsync(request, cancel) is not { } body)
            return Refusals.TooLarge();
        return RigProblemJson.Read(body) switch
        {
            ProblemCheck.Accepted accepted => await AnswerAsync(request.HttpContext.Response, queue, accepted.Problem, cancel),
            ProblemCheck.Refused refused => Refusals.Refused(refused),
            _ => throw new InvalidOperationException("A third kind of check."),
        };
    }

    private static async Task<IResult> AnswerAsync(HttpResponse response, PlanQueue queue, RigProblem problem, CancellationToken cancel)
    {
        switch (await queue.AskAsync(problem, progress: null, cancel))
        {
            case QueueAnswer.Full full:
                response.Headers.RetryAfter = ((int)full.RetryAfter.TotalSeconds).ToString(System.Globalization.CultureInfo.InvariantCulture);
                return Refusals.Busy();
            case QueueAnswer.Answered answered:
                return TypedResults.Text(RigOutcomeJson.Write(answered.Outcome, problem), MediaTypeNames.Application.Json);
            default:
                throw new InvalidOperationException("A third kind of answer.");
        }
    }
}
