using GigRig.Domain.Events;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Units;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage.ValueConversion;

namespace GigRig.Data.Configurations;

/// <summary>How single values are written: words of the domain as words, so that the file can be read by a person, and times always as UTC.</summary>
internal static class StoredValues
{
    public static void Configure(ModelConfigurationBuilder conventions)
    {
        conventions.Properties<DateTime>().HaveConversion<UtcTime>();
        conventions.Properties<GearStatus>().HaveConversion<string>();
        conventions.Properties<CurrentType>().HaveConversion<string>();
        conventions.Properties<Polarity>().HaveConversion<string>();
        conventions.Properties<Bypass>().HaveConversion<string>();
        conventions.Properties<JackUse>().HaveConversion<string>();
        conventions.Properties<Side>().HaveConversion<string>();
        conventions.Properties<SupplyMount>().HaveConversion<string>();
        conventions.Properties<AmpLoop>().HaveConversion<string>();
        conventions.Properties<MainsPlug>().HaveConversion<string>();
        conventions.Properties<LeadKind>().HaveConversion<string>();
        conventions.Properties<PlugShape>().HaveConversion<string>();
        conventions.Properties<SignalLevel>().HaveConversion<string>();
        conventions.Properties<InstrumentFamily>().HaveConversion<string>();
        conventions.Properties<NeedLevel>().HaveConversion<string>();
        conventions.Properties<ChainPolicy>().HaveConversion<string>();
        conventions.Properties<LengthUnit>().HaveConversion<string>();
    }

    /// <summary>SQLite has no time type and forgets the kind. A local time is a fault of ours and is refused rather than shifted.</summary>
    private sealed class UtcTime() : ValueConverter<DateTime, DateTime>(
        time => RequireUtc(time),
        stored => DateTime.SpecifyKind(stored, DateTimeKind.Utc))
    {
        private static DateTime RequireUtc(DateTime time) => time.Kind == DateTimeKind.Utc
            ? time
            : throw new ArgumentException($"Times are stored as UTC; {time:o} is {time.Kind}.", nameof(time));
    }
}
