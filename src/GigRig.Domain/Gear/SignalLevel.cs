namespace GigRig.Domain.Gear;

/// <summary>
/// How strong a signal is, roughly: an instrument gives about a tenth of a volt to a quarter, line equipment about a volt. What is made for the one clips on the
/// other. Common practice; nobody publishes a border.
/// </summary>
public enum SignalLevel
{
    /// <summary>The owner has not said.</summary>
    Unknown,
    Instrument,
    Line,
}
