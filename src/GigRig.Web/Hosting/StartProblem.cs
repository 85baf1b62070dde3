using GigRig.Data;
using Microsoft.AspNetCore.Connections;

namespace GigRig.Web.Hosting;

/// <summary>A reason not to start, in words for the person at the keyboard.</summary>
public sealed class StartRefusedException(string message, Exception? inner = null) : Exception(message, inner);

/// <summary>Turns what can go wrong at start-up into plain words; anything else keeps its stack trace.</summary>
internal static class StartProblem
{
    public static string? Explain(Exception problem) => problem switch
    {
        StartRefusedException => problem.Message,
        DatabaseStartException => "Not started. " + problem.Message,
        IOException { InnerException: AddressInUseException } =>
            $"""
            {problem.Message}
            Another program listens there, perhaps this app in another window. Stop it, or start here with another port:
            --urls http://localhost:5081
            """,
        _ => null,
    };
}
