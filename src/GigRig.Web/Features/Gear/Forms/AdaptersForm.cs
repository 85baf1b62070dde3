using GigRig.Domain.Gear;
using GigRig.Web.Shared.Forms;

namespace GigRig.Web.Features.Gear.Forms;

/// <summary>How many power adapter leads are owned, as typed.</summary>
public sealed class AdaptersForm : LiveForm
{
    public int? Reverse { get; set; }

    public int? Parallel { get; set; }

    public int? Series { get; set; }

    public int? Splitter { get; set; }

    public void Show(PowerAdapters adapters) =>
        (Reverse, Parallel, Series, Splitter) = (adapters.Reverse, adapters.Parallel, adapters.Series, adapters.Splitter);

    /// <summary>Null where something is wrong. An empty field is none.</summary>
    public PowerAdapters? Read()
    {
        var adapters = new PowerAdapters(Reverse ?? 0, Parallel ?? 0, Series ?? 0, Splitter ?? 0);
        Errors.Set(ThingCheck.Of(adapters).Select(complaint => new FieldError(complaint.Path.Split('/')[^1], complaint.Message)));
        return Errors.None ? adapters : null;
    }

    public override void Check() => Read();
}
