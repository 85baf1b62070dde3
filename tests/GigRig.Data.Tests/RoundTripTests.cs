using CsCheck;
using GigRig.Domain.Gear;
using GigRig.TestKit.Generating;

namespace GigRig.Data.Tests;

/// <summary>Whatever is stored comes back equal in every field. A field forgotten in a row makes these fail.</summary>
public sealed class RoundTripTests(RoundTripTests.Fixture fixture) : IClassFixture<RoundTripTests.Fixture>
{
    private const int Tries = 25;

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public Task Any_device_comes_back() => ComesBackAsync(AnyGear.Device, (device, id) => device with { Id = id });

    [Fact]
    public Task Any_board_comes_back() => ComesBackAsync(AnyBoard.Board, (board, id) => board with { Id = id });

    [Fact]
    public Task Any_supply_comes_back() => ComesBackAsync(AnyBoard.Supply, (supply, id) => supply with { Id = id });

    [Fact]
    public Task Any_amp_comes_back() => ComesBackAsync(AnyGear.Amp, (amp, id) => amp with { Id = id });

    [Fact]
    public Task Any_off_board_item_comes_back() => ComesBackAsync(AnyGear.OffBoard, (item, id) => item with { Id = id });

    [Fact]
    public Task Any_lead_comes_back() => ComesBackAsync(AnyGear.Lead, (lead, id) => lead with { Id = id });

    [Fact]
    public Task Any_instrument_comes_back() => ComesBackAsync(AnyGear.Instrument, (instrument, id) => instrument with { Id = id });

    [Fact]
    public Task Any_event_type_comes_back() => AnyEvent.EventType.SampleAsync(
        async eventType =>
        {
            var added = await fixture.Library.Events.AddAsync(eventType, Cancel);
            Assert.Equal(eventType, (await fixture.Library.Events.FindAsync(added.Id, Cancel))!.Item);
        },
        iter: Tries,
        threads: 1);

    [Fact]
    public Task Any_adapter_counts_come_back() => AnyGear.Adapters.SampleAsync(
        async adapters =>
        {
            var before = await fixture.Library.Gear.AdaptersAsync(Cancel);
            await fixture.Library.Gear.SaveAdaptersAsync(before with { Item = adapters }, Cancel);
            Assert.Equal(adapters, (await fixture.Library.Gear.AdaptersAsync(Cancel)).Item);
        },
        iter: Tries,
        threads: 1);

    // Adds one and saves another over it, so that both ways of writing are tried.
    private Task ComesBackAsync<T>(Gen<T> gen, Func<T, GearId, T> named)
        where T : class => Gen.Select(gen, gen, AnyGear.Ownership, AnyGear.Ownership).SampleAsync(
            async (first, second, firstOwnership, secondOwnership) =>
            {
                var gear = fixture.Library.Gear;
                var added = await gear.AddAsync(first, firstOwnership, Cancel);
                var id = Stored.GearIdOf(added.Id);
                Assert.Equal(new OwnedGear<T>(named(first, id), firstOwnership), (await gear.FindAsync<T>(added.Id, Cancel))!.Item);
                await gear.SaveAsync(added with { Item = new(second, secondOwnership) }, Cancel);
                Assert.Equal(new OwnedGear<T>(named(second, id), secondOwnership), (await gear.FindAsync<T>(added.Id, Cancel))!.Item);
            },
            iter: Tries,
            threads: 1);

    public sealed class Fixture : IAsyncLifetime
    {
        internal LibraryOnDisk Library { get; private set; } = null!;

        public async ValueTask InitializeAsync() => Library = await LibraryOnDisk.NewAsync();

        public ValueTask DisposeAsync() => Library.DisposeAsync();
    }
}
