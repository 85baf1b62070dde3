using GigRig.Domain.Formulas;
using static GigRig.Web.Drawing.SvgNumbers;

namespace GigRig.Web.Features.Rigs.Tone;

/// <summary>Where things lie in the plot of a response: frequency along on the ear's scale, decibels up.</summary>
internal static class TonePlot
{
    public const double Width = 640;
    public const double Height = 300;
    public const double Left = 60;
    public const double Right = 12;
    public const double Top = 30;
    public const double Bottom = 42;

    private const double LeastHertz = 200;
    private const double MostHertz = 12_000;
    private const double LeastDecibels = -24;
    private const double MostDecibels = 15;
    private const int Steps = 160;

    public static (int Hertz, string Label)[] Columns { get; } = [(200, "200 Hz"), (500, "500"), (1000, "1 kHz"), (2000, "2"), (5000, "5"), (10_000, "10")];

    public static int[] Rows { get; } = [12, 0, -12, -24];

    public static double X(double hertz) =>
        Left + ((Width - Left - Right) * Math.Log(hertz / LeastHertz) / Math.Log(MostHertz / LeastHertz));

    /// <summary>What would leave the plot runs along its edge.</summary>
    public static double Y(double decibels) =>
        Top + ((Height - Top - Bottom) * (MostDecibels - Math.Clamp(decibels, LeastDecibels, MostDecibels)) / (MostDecibels - LeastDecibels));

    public static string Path(PickupCircuit circuit) => string.Concat(Enumerable.Range(0, Steps + 1)
        .Select(step => LeastHertz * Math.Pow(MostHertz / LeastHertz, (double)step / Steps))
        .Select((hertz, step) => $"{(step == 0 ? 'M' : 'L')}{N(X(hertz))} {N(Y(circuit.DecibelsAt(hertz)))}"));
}
