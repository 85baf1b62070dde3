using System.Globalization;

namespace GigRig.Web.Drawing;

/// <summary>Figures as line paths, 2 wide and 4 high, for a picture made where there may be no font.</summary>
internal static class Digits
{
    private static readonly string[] Paths =
    [
        "M1 0C2 0 2 1 2 2S2 4 1 4S0 3 0 2S0 0 1 0",
        "M0 1L1 0V4M0 4H2",
        "M0 1C0 0 2 -0.3 2 1C2 2 0 3 0 4H2",
        "M0 0.5C0.6 -0.3 2 0 2 1C2 1.8 1 2 0.8 2C1 2 2 2.2 2 3C2 4 0.6 4.3 0 3.5",
        "M1.5 4V0L0 2.8H2",
        "M2 0H0.3L0.1 1.9C0.8 1.3 2 1.6 2 2.8C2 4 0.5 4.3 0 3.5",
        "M1.8 0.3C0.6 -0.3 0 1 0 2.7C0 4.4 2 4.4 2 2.8S0.2 1.4 0 2.7",
        "M0 0H2L0.8 4",
        "M1 1.9C-0.2 1.9 -0.2 0 1 0S2.2 1.9 1 1.9C-0.4 1.9 -0.4 4 1 4S2.4 1.9 1 1.9",
        "M0.2 3.7C1.4 4.3 2 3 2 1.3C2 -0.4 0 -0.4 0 1.2S1.8 2.6 2 1.3",
    ];

    public static IReadOnlyList<string> Of(int number) => [.. number.ToString(CultureInfo.InvariantCulture).Where(char.IsAsciiDigit).Select(digit => Paths[digit - '0'])];
}
