using GigRig.Domain;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;

namespace GigRig.Web.Sheets;

/// <summary>Where one thing stands, in words.</summary>
/// <param name="Number">As in the drawing.</param>
/// <param name="Left">From the board's left edge to the thing's.</param>
/// <param name="Front">From the board's front edge to the thing's.</param>
/// <param name="Turned">Empty where it is not turned.</param>
public sealed record PlaceLine(int Number, string Name, string Left, string Front, string Turned);

/// <summary>Where everything stands, for somebody with a tape measure.</summary>
public sealed record PlacesSheet(ValueList<PlaceLine> Lines)
{
    public static PlacesSheet Of(RigProblem problem, Rig rig, LengthUnit unit)
    {
        var numbers = RigNumbers.Of(rig);
        var standing = rig.Supply is { } supply ? rig.Placements.Append(supply) : rig.Placements;
        return new(standing
            .Select(placement => new PlaceLine(
                numbers[placement.Id],
                problem.NameOf(placement.Id),
                LengthText.Format(placement.At.X, unit),
                LengthText.Format(placement.At.Y, unit),
                placement.Turn == Turn.None ? "" : $"{(int)placement.Turn}° clockwise"))
            .OrderBy(line => line.Number)
            .ToValueList());
    }
}
