using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.Domain.Wiring;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Wiring;

public sealed class LongLeadTests
{
    private static readonly Lead Stage = new(new("stage"), "Stage", LeadKind.Instrument, 6000.Mm, PlugShape.Straight, PlugShape.Straight, 2, 120);

    private static readonly RigProblemDraft Draft = A.Draft()
        .With(A.Device("fuzz").Sized(60, 100), A.Device("wah").Sized(60, 100), A.Device("tuner").Sized(60, 100) with { Bypass = Bypass.Buffered }, A.Device("echo").Sized(60, 100))
        .Through(A.Amp()) with { Leads = [Stage] };

    private static readonly Rig Rig = A.Rig().Placing("fuzz", 400, 0).Placing("wah", 300, 0).Placing("tuner", 200, 0).Placing("echo", 100, 0);

    [Fact]
    public void It_ends_at_the_first_device_that_buffers()
    {
        var lead = LongLead.Of(LeadPlan.Of(Draft.Problem(), Rig));

        Assert.Equal((3, 2, new GearId("tuner")), (lead.Pieces.Count, lead.Boxes, lead.Buffer));
        Assert.Equal(new LeadPiece(6000.Mm, 120), lead.Pieces[0]);
    }

    [Fact]
    public void Without_one_it_goes_all_the_way_to_the_amp()
    {
        var lead = LongLead.Of(LeadPlan.Of(Draft.Problem(), Rig.Chained("fuzz wah echo")));

        Assert.Equal((4, 3, (GearId?)null), (lead.Pieces.Count, lead.Boxes, lead.Buffer));
        Assert.Equal(new LeadPiece(6000.Mm, 120), lead.Pieces[^1]);
    }

    [Fact]
    public void A_hop_without_an_owned_lead_counts_with_what_it_needs()
    {
        var lead = LongLead.Of(LeadPlan.Of((Draft with { Leads = [] }).Problem(), Rig));

        Assert.Equal(new LeadPiece(WiringAllowances.Usual.ToBoard, null), lead.Pieces[0]);
        Assert.All(lead.Pieces, piece => Assert.True(piece.Length > Millimetres.Zero));
    }

    [Fact]
    public void Straight_into_the_amp_it_is_one_lead() => Assert.Equal((1, 0), (LongLead.Of(LeadPlan.Of(Draft.Problem(), A.Rig())).Pieces.Count, LongLead.Of(LeadPlan.Of(Draft.Problem(), A.Rig())).Boxes));
}
