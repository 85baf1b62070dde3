using System.Text.Json;
using System.Text.Json.Serialization;

namespace GigRig.Web.Api;

/// <summary>What the API is made of, beside its endpoints.</summary>
internal static class ApiHosting
{
    public static void AddPlanApi(this IServiceCollection services)
    {
        // The description is made from these; the documents themselves are read and written by the domain, the same way.
        services.ConfigureHttpJsonOptions(options =>
        {
            options.SerializerOptions.NumberHandling = JsonNumberHandling.Strict;
            options.SerializerOptions.RespectNullableAnnotations = true;
            options.SerializerOptions.Converters.Add(new JsonStringEnumConverter(JsonNamingPolicy.CamelCase, allowIntegerValues: false));
        });
        services.AddOpenApi(options => options.AddDocumentTransformer((document, _, _) =>
        {
            document.Info = new()
            {
                Title = "Fit for the Gig",
                Version = "v1",
                Description = "Asks the planner for a rig that is proved to fit the board, to be powered and to cover the roles an event needs.",
            };
            return Task.CompletedTask;
        }));
    }

    /// <summary>Answers of the API are documents, its failures too; pages for people would not do.</summary>
    public static void UseApiFailures(this IApplicationBuilder app) => app.UseWhen(
        context => GigRigUrls.IsApi(context.Request.Path),
        api => api.UseExceptionHandler().UseStatusCodePages());
}
