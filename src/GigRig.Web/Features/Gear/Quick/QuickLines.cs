using System.Text.Json.Serialization;
using GigRig.Web.Shared.Forms;

namespace GigRig.Web.Features.Gear.Quick;

/// <summary>All lines on the page that are not added yet, as typed.</summary>
public sealed class QuickLines : LiveForm
{
    /// <summary>The last is the open one, where the next thing goes. Those before it had faults when that one was being typed already, or wait to be taken up again.</summary>
    public List<QuickForm> Lines { get; init; } = [];

    [JsonIgnore]
    public bool AllBlank => Lines.TrueForAll(line => line.IsBlank);

    /// <summary>Each line checks itself.</summary>
    public override void Check()
    {
    }
}
