using System.Globalization;
using GigRig.Domain.Events;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.Domain.Wishes;
using GigRig.Web.Shared;

namespace GigRig.Web.Sheets;

/// <summary>How good a rig is, in words and numbers.</summary>
public static class ScoreWords
{
    /// <summary>The tiers of the score, each with its name.</summary>
    public static IEnumerable<(string Name, string Value)> Figures(RigProblem problem, Score score, LengthUnit unit = LengthUnit.Millimetres)
    {
        var all = AllWants(problem.Event);
        yield return ("Wants covered", all == 0 ? "none asked" : $"{Number(score.Wants)} of {Number(all)}");
        yield return ("Ratings", Number(score.Rating));
        yield return ("On the board", Words.Count(score.Devices, "box", "boxes"));
        yield return ("Carried", $"{score.Mass.Value / 1000m:0.0} kg");
        yield return ("Patch lead", LengthText.Format(score.Leads, unit));
    }

    /// <summary>Everything asked for that the rig does not do, the needs first; empty where it does all.</summary>
    public static string Uncovered(CoverSheet sheet) => string.Join(
        ", ",
        sheet.Roles.Where(line => line.Thing is null).Select(line => line.Role)
            .Concat(sheet.Sounds.Where(line => line.Parts.Count == 0).Select(line => $"the sound {line.Name}")));

    /// <summary>How a search is getting on.</summary>
    public static string ProgressOf(RigProblem problem, PlanProgress? progress) => (progress, AllWants(problem.Event)) switch
    {
        (null, _) => "Looking for a first rig that keeps every rule.",
        ({ Best: null } early, var all) => $"No rig yet. At most {Number(early.Bound)} of {Number(all)} in wants can be covered.",
        ({ } late, 0) => $"A rig with {Words.Count(late.Best!.Score.Devices, "box", "boxes")} so far.",
        ({ } late, _) => $"Best so far covers {Number(late.Best!.Score.Wants)} in wants; at most {Number(late.Bound)} can be covered.",
    };

    /// <summary>The weight of everything that is wanted.</summary>
    public static long AllWants(EventType asked) =>
        asked.Needs.Where(need => need.Level == NeedLevel.Want).Sum(need => (long)need.Weight)
        + asked.Sounds.Where(sound => sound.Level == NeedLevel.Want).Sum(sound => (long)sound.Weight);

    private static string Number(long value) => value.ToString("N0", CultureInfo.CurrentCulture);
}
