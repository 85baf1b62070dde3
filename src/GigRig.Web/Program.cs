using GigRig.Web.Hosting;

try
{
    var builder = WebApplication.CreateBuilder(new WebApplicationOptions { Args = args, ContentRootPath = AppContext.BaseDirectory });
    builder.AddGigRig();
    var app = builder.Build();
    app.UseGigRig();
    await app.PrepareDataAsync();
    await app.RunAsync();
    return 0;
}
catch (Exception problem) when (StartProblem.Explain(problem) is { } words)
{
    Console.Error.WriteLine(words);
    return 1;
}
catch (OperationCanceledException)
{
    // Told to stop while it was still starting.
    return 0;
}

/// <summary>Named so that the tests can boot the real thing.</summary>
public sealed partial class Program;
