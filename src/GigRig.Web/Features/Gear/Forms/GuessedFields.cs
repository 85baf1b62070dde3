using GigRig.Domain.Gear;

namespace GigRig.Web.Features.Gear.Forms;

/// <summary>Which guess an entry belongs to: typing something else there puts an end to it.</summary>
internal static class GuessedFields
{
    /// <param name="field">Path within the thing, such as <c>jacks/1/at</c>.</param>
    public static IEnumerable<Guess> Of(string field) => field.Split('/') switch
    {
        ["width" or "depth", ..] => [Guess.Size],
        ["height", ..] => [Guess.Height],
        ["mass", ..] => [Guess.Mass],
        ["jacks", ..] => [Guess.Jacks],
        ["switches", ..] => [Guess.Switches],
        ["power", "current"] => [Guess.Draw],
        ["power", "min" or "max" or "type" or "polarity"] => [Guess.Voltage],
        // Switched on or off as a whole.
        ["power"] => [Guess.Draw, Guess.Voltage],
        ["rails" or "keepOut", ..] => [Guess.Surface],
        ["overhang", ..] => [Guess.Overhang],
        ["mount", ..] => [Guess.Mount],
        ["outlets", _, "group"] => [Guess.Returns],
        ["kind"] => [Guess.LeadKind, Guess.Family],
        ["family"] => [Guess.Family],
        ["loop"] => [Guess.Loop],
        ["firstPlug" or "secondPlug"] => [Guess.Plugs],
        _ => [],
    };
}
