using System.CommandLine;
using GigRig.Benchmarks.Problems;

namespace GigRig.Benchmarks.Commands;

/// <summary>Options that several commands take.</summary>
internal static class Options
{
    private const double MostSeconds = 600;

    public static Argument<FileInfo[]> Files() => new("FILE") { Description = "rig-problem/1 files.", Arity = ArgumentArity.ZeroOrMore };

    /// <summary>Either files, all of which are there, or something else to solve.</summary>
    public static void AskForOne(this Command command, Argument<FileInfo[]> files, Option other) => command.Validators.Add(result =>
    {
        var given = result.GetValue(files) ?? [];
        if (given.Length > 0 == result.GetResult(other) is { Implicit: false })
            result.AddError($"{command.Name} takes either FILE… or {other.Name}.");
        foreach (var missing in given.Where(file => !file.Exists))
            result.AddError($"There is no file {missing}.");
    });

    public static Option<double?> Limit(string description)
    {
        var limit = new Option<double?>("--limit") { Description = description };
        limit.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<double?>() is { } seconds && seconds is not (>= 0.001 and <= MostSeconds))
                result.AddError($"--limit {seconds}: give 0.001 to {MostSeconds} seconds.");
        });
        return limit;
    }

    public static TimeSpan? Seconds(double? seconds) => seconds is { } given ? TimeSpan.FromSeconds(given) : null;

    public static Option<int> Number(string name, string description, int least, int most, int usual)
    {
        var number = new Option<int>(name) { Description = $"{description} ({least}–{most})", DefaultValueFactory = _ => usual };
        number.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<int>() is var given && (given < least || given > most))
                result.AddError($"{name} {given}: give {least} to {most}.");
        });
        return number;
    }

    public static Option<BoardSize> Board() => new("--board")
    {
        Description = "Width x depth of the board in mm",
        DefaultValueFactory = _ => new(460, 135),
        CustomParser = result =>
        {
            if (BoardSize.Parse(result.Tokens[0].Value) is { } size)
                return size;
            result.AddError($"--board {result.Tokens[0].Value}: give width and depth in whole mm, 1 to 3000 each, such as 460x135.");
            return default;
        },
    };
}
