using ProcessorDesk.Trade.Curing;
using Xunit;
using static ProcessorDesk.Trade.Tests.Curing.Cure;

namespace ProcessorDesk.Trade.Tests.Curing;

/// <summary>Source: 9 CFR 424.21(c) for the limits, 424.22(b) for pumped bacon; text of the 2015 edition.</summary>
public sealed class AcceleratorTests
{
    [Theory]
    [InlineData(null, AcceleratorKind.Salt, false)]
    [InlineData("0", AcceleratorKind.Salt, false)]
    [InlineData("546.875", AcceleratorKind.Salt, false)] // the limit elsewhere is another number
    [InlineData("549", AcceleratorKind.Salt, false)]
    [InlineData("549.49", AcceleratorKind.Salt, false)]
    [InlineData("549.5", AcceleratorKind.Salt, true)] // the figure is printed in whole ppm
    [InlineData("550", AcceleratorKind.Salt, true)]
    [InlineData("550.49", AcceleratorKind.Salt, true)]
    [InlineData("550.5", AcceleratorKind.Salt, false)]
    [InlineData("551", AcceleratorKind.Salt, false)]
    [InlineData("550", AcceleratorKind.Acid, false)]
    public void Pumped_bacon_is_prescribed_550_ppm_of_a_sodium_salt(string? ppm, AcceleratorKind kind, bool meets)
    {
        // 1.92 oz × 100 % × 10 % / 1,600 oz = 120 ppm
        var check = IngoingCure.Check(Pickled(CureMethod.BaconPumped, 100m, 10m, PureNitrite(1.92m / 16m)) with { Accelerator = Of(ppm, kind) });

        Assert.Equal((120m, meets, false), (check.NitritePpm, check.Meets, check.BelowMinimum));
        if (!meets)
            Assert.Equal(("Accelerator", "550 ppm sodium ascorbate or erythorbate"), (Assert.Single(check.Findings).Field, check.Findings[0].Allowed));
    }

    [Theory]
    [InlineData(null, AcceleratorKind.Salt, true)]
    [InlineData("0", AcceleratorKind.Acid, true)]
    [InlineData("468.75", AcceleratorKind.Acid, true)]
    [InlineData("468.7501", AcceleratorKind.Acid, false)]
    [InlineData("546.875", AcceleratorKind.Salt, true)]
    [InlineData("546.8751", AcceleratorKind.Salt, false)]
    public void Elsewhere_it_may_be_left_out_and_has_a_limit(string? ppm, AcceleratorKind kind, bool meets)
    {
        var question = CureQuestion.Comminuted(Weight.FromPounds(100m), [Cure.Of(Weight.FromOunces(4m))]) with { Accelerator = Of(ppm, kind) };

        Assert.Equal((156.25m, meets), Answer(question));
    }

    [Fact]
    public void It_goes_in_only_with_a_cure()
    {
        var check = IngoingCure.Check(CureQuestion.Comminuted(Weight.FromPounds(100m), []) with { Accelerator = Of("400", AcceleratorKind.Salt) });

        Assert.Equal(["Cure", "Accelerator"], check.Findings.Select(finding => finding.Field));
        Assert.False(check.Meets);
    }

    [Fact]
    public void Less_than_none_is_a_slip() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Answer(CureQuestion.Comminuted(Weight.FromPounds(100m), []) with { Accelerator = Of("-1", AcceleratorKind.Salt) }));

    private static CureAccelerator? Of(string? ppm, AcceleratorKind kind) => ppm is null ? null : new CureAccelerator(kind, Figure(ppm));
}
