namespace GigRig.Web.Guesses;

internal static class GuessServices
{
    public static IServiceCollection AddGuesses(this IServiceCollection services) => services.AddSingleton<KnownGuesses>();
}
