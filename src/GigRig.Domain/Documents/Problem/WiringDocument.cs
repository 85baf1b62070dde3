using System.ComponentModel;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rigs.Checks;
using GigRig.Domain.Units;

namespace GigRig.Domain.Documents.Problem;

[Description("What leads need beside the way they take. Millimetres; the defaults are common practice.")]
public sealed record WiringDocument
{
    [Description("At each end of a lead on the board.")]
    [Within(0, Bounds.MostAllowance)]
    public int Bend { get; init; } = WiringAllowances.Usual.Bend.Value;

    [Description("For each lead on the board.")]
    [Within(0, Bounds.MostAllowance)]
    public int Slack { get; init; } = WiringAllowances.Usual.Slack.Value;

    [Description("Cable inside each plug of a lead that is made.")]
    [Within(0, Bounds.MostAllowance)]
    public int Swallowed { get; init; } = WiringAllowances.Usual.Swallowed.Value;

    [Description("Lead asked for between instrument and board.")]
    [Within(0, Bounds.MostLeadLength)]
    public int ToBoard { get; init; } = WiringAllowances.Usual.ToBoard.Value;

    [Description("Lead asked for between board and amp or desk.")]
    [Within(0, Bounds.MostLeadLength)]
    public int ToAmp { get; init; } = WiringAllowances.Usual.ToAmp.Value;

    internal static WiringDocument? Of(WiringAllowances wiring) => wiring == WiringAllowances.Usual
        ? null
        : new() { Bend = wiring.Bend.Value, Slack = wiring.Slack.Value, Swallowed = wiring.Swallowed.Value, ToBoard = wiring.ToBoard.Value, ToAmp = wiring.ToAmp.Value };

    internal WiringAllowances ToWiring() => new(Bend.Mm, Slack.Mm, Swallowed.Mm, ToBoard.Mm, ToAmp.Mm);
}
