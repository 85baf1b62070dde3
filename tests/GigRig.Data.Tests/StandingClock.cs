namespace GigRig.Data.Tests;

internal sealed class StandingClock : TimeProvider
{
    public DateTimeOffset Now { get; set; } = new(2027, 3, 6, 20, 15, 0, TimeSpan.Zero);

    public override DateTimeOffset GetUtcNow() => Now;
}
