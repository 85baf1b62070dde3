using GigRig.Domain.Gear;

namespace GigRig.Domain.Tests.Gear;

public sealed class RoleCatalogueTests
{
    /// <summary>
    /// Plug-in classes of the LV2 standard's core ontology, as published in <c>lv2core.ttl</c> (commit 1eccbe4 of the standard's repository),
    /// those that describe an effect or a tool.
    /// </summary>
    private static readonly HashSet<string> PublishedClasses =
    [
        "UtilityPlugin", "ConverterPlugin", "AnalyserPlugin", "MixerPlugin", "SimulatorPlugin", "DelayPlugin", "ModulatorPlugin", "ReverbPlugin",
        "PhaserPlugin", "FlangerPlugin", "ChorusPlugin", "FilterPlugin", "LowpassPlugin", "BandpassPlugin", "HighpassPlugin", "CombPlugin",
        "AllpassPlugin", "EQPlugin", "ParaEQPlugin", "MultiEQPlugin", "SpatialPlugin", "SpectralPlugin", "PitchPlugin", "AmplifierPlugin",
        "EnvelopePlugin", "DistortionPlugin", "WaveshaperPlugin", "DynamicsPlugin", "CompressorPlugin", "ExpanderPlugin", "LimiterPlugin", "GatePlugin",
    ];

    [Fact]
    public void Every_built_in_role_is_anchored_to_a_published_class() =>
        Assert.All(RoleCatalogue.All, entry => Assert.Contains(entry.PluginClass, PublishedClasses));

    [Fact]
    public void Keys_are_well_formed_and_stand_once()
    {
        Assert.All(RoleCatalogue.All, entry => Assert.True(Role.IsWellFormed(entry.Role.Key), entry.Role.Key));
        Assert.Distinct(RoleCatalogue.All.Select(entry => entry.Role));
    }

    [Fact]
    public void Entries_stand_in_chain_order() =>
        Assert.Equal(RoleCatalogue.All.OrderBy(entry => entry.ChainRank), RoleCatalogue.All);

    /// <summary>Common practice as many players' guides give it; no standard.</summary>
    [Fact]
    public void Usual_order_runs_from_tuner_to_looper()
    {
        string[] usual = ["tuner", "drive.fuzz", "filter", "pitch", "compressor", "drive.low", "drive.high", "equaliser", "gate", "modulation", "volume", "delay", "reverb", "looper"];
        Assert.Equal(usual, usual.OrderByDescending(key => key).OrderBy(key => RoleCatalogue.ChainRankOf(new(key))));
    }

    [Fact]
    public void Every_dotted_role_has_its_wider_role_in_the_catalogue() =>
        Assert.All(RoleCatalogue.All, entry => Assert.True(entry.Role.Wider is not { } wider || RoleCatalogue.Find(wider) is not null, entry.Role.Key));

    [Fact]
    public void Drive_narrows_to_low_high_and_fuzz() =>
        Assert.Equal(["drive.fuzz", "drive.low", "drive.high"], RoleCatalogue.Narrower(new("drive")).Select(entry => entry.Role.Key));

    [Theory]
    [InlineData("drive.high.modded", 70)]
    [InlineData("delay.tape", 120)]
    [InlineData("theremin", RoleCatalogue.RankOfOwnRoles)]
    public void An_owners_own_role_takes_the_rank_of_the_nearest_wider_one(string key, int rank) =>
        Assert.Equal(rank, RoleCatalogue.ChainRankOf(new(key)));

    [Fact]
    public void An_owners_own_role_is_titled_by_its_key()
    {
        Assert.Equal("theremin", RoleCatalogue.TitleOf(new("theremin")));
        Assert.Equal("High gain drive", RoleCatalogue.TitleOf(new("drive.high")));
    }
}
