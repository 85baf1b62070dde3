using System.Net.Sockets;
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
        // From the web server; it has no type of its own.
        InvalidOperationException when problem.Message.StartsWith("Unable to configure HTTPS endpoint", StringComparison.Ordinal) =>
            $"Not started: {problem.Message}\nOr listen without encryption, for this computer alone: --urls {ListenPolicy.DefaultAddress}",
        _ when IsForbiddenPort(problem) =>
            $"Not started: {problem.Message.TrimEnd('.')}: this user may not listen there. Ports below 1024 are often kept for administrators; take another, such as --urls {ListenPolicy.DefaultAddress}",
        _ => null,
    };

    // "localhost" is two addresses, and their refusals come as a bundle.
    private static bool IsForbiddenPort(Exception problem) => problem switch
    {
        SocketException socket => socket.SocketErrorCode == SocketError.AccessDenied,
        AggregateException several => several.InnerExceptions.All(IsForbiddenPort),
        IOException { InnerException: { } inner } => IsForbiddenPort(inner),
        _ => false,
    };
}
