using GigRig.Domain.Units;

namespace GigRig.Domain.Rigs;

/// <summary>
/// What a lead needs beside the way it takes. The defaults are common practice, no published figures: a cable leaves a plug in a bend of about 15 mm, a cut lead
/// loses two to three centimetres in each plug, and a player brings about 6 m to the board and 3 m from there to the amp.
/// </summary>
/// <param name="Bend">At each end of a lead on the board, 0–1000 mm.</param>
/// <param name="Slack">For each lead on the board, 0–1000 mm.</param>
/// <param name="Swallowed">Cable inside each plug of a lead that is made, 0–1000 mm.</param>
/// <param name="ToBoard">Length of lead asked for between instrument and board, 0–100 m.</param>
/// <param name="ToAmp">Length of lead asked for between board and amp or desk, 0–100 m.</param>
public sealed record WiringAllowances(Millimetres Bend, Millimetres Slack, Millimetres Swallowed, Millimetres ToBoard, Millimetres ToAmp)
{
    public static WiringAllowances Usual { get; } = new(15.Mm, 20.Mm, 25.Mm, 6000.Mm, 3000.Mm);
}
