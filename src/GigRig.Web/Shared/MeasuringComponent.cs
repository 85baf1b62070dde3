using GigRig.Domain.Units;
using Microsoft.AspNetCore.Components;

namespace GigRig.Web.Shared;

/// <summary>A page, or a part of one, that shows or reads lengths in the unit the owner chose.</summary>
public abstract class MeasuringComponent : ComponentBase
{
    /// <summary>Millimetres where nobody chose.</summary>
    protected LengthUnit Unit => Units?.Unit ?? LengthUnit.Millimetres;

    [CascadingParameter]
    private UnitPreference? Units { get; set; }
}
