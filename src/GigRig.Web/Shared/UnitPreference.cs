using GigRig.Domain.Units;

namespace GigRig.Web.Shared;

/// <summary>The unit lengths are shown in, and how to change it. Cascades to every page; a page shown without it uses millimetres.</summary>
public sealed record UnitPreference(LengthUnit Unit, Func<LengthUnit, Task> ChooseAsync)
{
    /// <summary>The same name stands in <c>js/display.js</c>, which writes it.</summary>
    public const string CookieName = "gigrig-unit";

    internal static LengthUnit Read(IRequestCookieCollection cookies) =>
        cookies[CookieName] == "inches" ? LengthUnit.Inches : LengthUnit.Millimetres;
}
