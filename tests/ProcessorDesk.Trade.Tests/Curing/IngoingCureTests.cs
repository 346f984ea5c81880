using ProcessorDesk.Trade.Curing;
using Xunit;
using static ProcessorDesk.Trade.Tests.Curing.Cure;

namespace ProcessorDesk.Trade.Tests.Curing;

public sealed class IngoingCureTests
{
    private static readonly CureAccelerator Ascorbate = new(AcceleratorKind.Salt, 550m);

    [Fact]
    public void Each_method_asks_for_what_it_is_worked_on()
    {
        Assert.Equal(["MeatBlock"], Missing(CureMethod.Comminuted));
        Assert.Equal(["Pickle", "Pump"], Missing(CureMethod.Pumped));
        Assert.Equal(["Pickle", "Pump"], Missing(CureMethod.ImmersionPickup));
        Assert.Equal(["MeatBlock", "Pickle"], Missing(CureMethod.ImmersionEquilibrium));
        Assert.Equal(["MeatBlock"], Missing(CureMethod.Dry));
        Assert.Equal(["Pickle", "Pump"], Missing(CureMethod.BaconPumped));
        Assert.Equal(["MeatBlock", "Pickle"], Missing(CureMethod.BaconImmersion));
        Assert.Equal(["MeatBlock"], Missing(CureMethod.BaconDry));
    }

    [Fact]
    public void A_question_with_problems_does_not_meet_and_has_no_most()
    {
        var question = Pickled(CureMethod.Pumped, 0m, 10m, PureNitrite(1m));

        var check = IngoingCure.Check(question);

        Assert.Equal((false, 0m), (check.Meets, check.NitritePpm));
        Assert.Equal("Weigh the whole pickle, with the cure in it.", Assert.Single(check.Findings).Text);
        Assert.Equal((Weight.Zero, check.Findings[0].Text), (Most(question).Amount, Most(question).Why));
        Assert.Throws<ArgumentException>(() => CureDose.AmountFor(question, Ratio.Of(1, 6400), Pink, ScaleDivision.TenthGram));
    }

    /// <summary>Common practice, no source: a pump is never under 1 %; a tenth typed for ten percent would let in a hundred times the cure.</summary>
    [Theory]
    [InlineData("0", false)]
    [InlineData("0.1", false)]
    [InlineData("0.9999", false)]
    [InlineData("1", true)]
    [InlineData("100", true)]
    [InlineData("100.0001", false)]
    public void A_pump_typed_as_a_fraction_is_caught(string percent, bool isTaken) =>
        Assert.Equal(isTaken, Pickled(CureMethod.Pumped, 100m, Figure(percent)).Problems().Count == 0);

    [Fact]
    public void Bacon_is_immersed_by_pick_up_where_one_is_stated_and_by_equilibrium_otherwise()
    {
        var pickUp = Pickled(CureMethod.BaconImmersion, 100m, 10m, PureNitrite(0.1m)); // 0.1 × 10 % / 100 = 100 ppm
        var equilibrium = pickUp with { Pump = null, Meat = Pounds(900m) }; // 0.1 / (900 + 100) = 100 ppm

        Assert.Equal((100m, true), Answer(pickUp));
        Assert.Equal((100m, true), Answer(equilibrium));
        Assert.Equal((200m, false), Answer(equilibrium with { Meat = Pounds(400m) }));
    }

    [Fact]
    public void The_pump_of_a_method_without_one_does_not_count() =>
        Assert.Equal((156.25m, true), Answer(CureQuestion.Comminuted(Weight.FromPounds(100m), [Of(Weight.FromOunces(4m))]) with { Pump = Proportion.FromPercent(10m), Pickle = Grams(1m) }));

    [Fact]
    public void Pumped_bacon_under_the_prescribed_figure_is_below_the_minimum_and_not_past_a_limit()
    {
        var potassium = Pickled(CureMethod.BaconPumped, 100m, 10m, PureNitrite(0.13m)) with { Salt = CuringSalt.Potassium, Accelerator = Ascorbate };

        var check = IngoingCure.Check(potassium); // 0.13 × 10 % / 100 = 130 ppm: over 120, but 148 are prescribed of potassium nitrite

        Assert.Equal((130m, true, true), (check.NitritePpm, check.Meets, check.BelowMinimum));
        Assert.Equal(("130 ppm", "148 ppm"), (Assert.Single(check.Findings).Found, check.Findings[0].Allowed));
    }

    [Fact]
    public void More_cure_than_pickle_is_not_a_pickle()
    {
        var question = Pickled(CureMethod.Pumped, 1m, 1m, CureAmount.Of("Weak cure", 1.001m, WeightUnit.Pound, Proportion.FromPercent(0.5m), Proportion.Zero));

        var check = IngoingCure.Check(question); // 1.001 × 0.5 % × 1 % / 1 = 50 ppm, inside the limit

        Assert.Equal("Pickle", check.Findings[0].Field);
        Assert.False(check.Meets);
        var most = CureDose.Most(question with { Cures = [] }, Proportion.FromPercent(0.5m), Proportion.Zero, ScaleDivision.Of(WeightUnit.Ounce, 1m));
        Assert.Equal((Weight.FromPounds(1m), "The pickle decides: no more cure than pickle can be in it."), (most.Amount, most.Why));
    }

    [Fact]
    public void The_most_of_one_cure_leaves_room_for_another()
    {
        // 3 oz × 6.25 % leave 0.25 − 0.1875 = 0.0625 oz nitrite, of a 5 % cure 1.25 oz
        var beside = CureQuestion.Comminuted(Weight.FromPounds(100m), [Of(Weight.FromOunces(3m)) with { KeyedIn = WeightUnit.Ounce }]);
        var hundredth = ScaleDivision.Of(WeightUnit.Ounce, 0.01m);

        Assert.Equal(Weight.FromOunces(1.25m), CureDose.Most(beside, Proportion.FromPercent(5m), Proportion.Zero, hundredth).Amount);
        Assert.Equal(Weight.Zero, CureDose.Most(beside with { Cures = [Of(Weight.FromOunces(5m))] }, Pink, Proportion.Zero, hundredth).Amount);
    }

    [Fact]
    public void Nitrate_decides_where_it_binds_first()
    {
        // on 100 lb of dry cure: nitrite 1 oz / 1 % = 100 oz; nitrate 3.5 oz / 10 % = 35 oz
        var most = CureDose.Most(new CureQuestion(CureMethod.Dry, []) { Meat = Pounds(100m) }, Proportion.FromPercent(1m), Proportion.FromPercent(10m), ScaleDivision.Of(WeightUnit.Ounce, 1m));

        Assert.Equal((Weight.FromOunces(35m), "dry.nitrate"), (most.Amount, most.Decides!.Id));
    }

    /// <summary>A division of 2.5 mg is kept as 3 mg. On 13 g of meat 2.03 mg of pure nitrite are allowed, and with half a milligram 2.53.</summary>
    [Fact]
    public void A_division_finer_than_milligrams_carry_does_not_slip_past() =>
        Assert.Equal(Weight.Zero, CureDose.Most(CureQuestion.Comminuted(Weight.FromGrams(13m), []), Proportion.Whole, Proportion.Zero, ScaleDivision.Of(WeightUnit.Gram, 0.0025m)).Amount);

    [Fact]
    public void A_cure_without_strength_has_no_most() =>
        Assert.Equal("There is neither nitrite nor nitrate in it.", CureDose.Most(CureQuestion.Comminuted(Weight.FromPounds(1m), []), Proportion.Zero, Proportion.Zero, ScaleDivision.TenthGram).Why);

    [Fact]
    public void Strengths_over_the_whole_have_no_most() =>
        Assert.Equal(Weight.Zero, CureDose.Most(CureQuestion.Comminuted(Weight.FromPounds(1m), []), Proportion.Whole, Pink, ScaleDivision.TenthGram).Amount);

    /// <summary>Source: FSIS Directive 7620.3 for 40 ppm; 9 CFR 424.21(c) for 200 ppm in finished product.</summary>
    [Theory]
    [InlineData("0.0639", "Under 40 ppm nitrite has little preserving effect.")] // 39.94 ppm
    [InlineData("0.064", null)]
    [InlineData("0.32", null)] // 200 ppm
    [InlineData("0.3201", "However much goes in, finished product holds at most 200 ppm of nitrite, as sodium nitrite.")]
    public void What_is_to_be_known_is_a_note(string ounces, string? note)
    {
        var check = IngoingCure.Check(new CureQuestion(CureMethod.Dry, [PureNitrite(Figure(ounces) / 16m)]) { Meat = Pounds(100m) });

        Assert.True(check.Meets);
        Assert.Equal(note is null ? [] : [note], check.Notes.Select(one => one.Text));
    }

    [Fact]
    public void A_strength_that_reads_like_a_fraction_is_noted() =>
        Assert.All(
            [
                Check(Weight.FromPounds(25m), Of(Weight.FromOunces(1m), 0.0625m)).Notes,
                CureDose.Most(CureQuestion.Comminuted(Weight.FromPounds(25m), []), Proportion.FromPercent(0.0625m), Proportion.Zero, ScaleDivision.TenthGram).Notes,
            ],
            notes => Assert.Contains(notes, note => note.Text.Contains("Was a fraction typed for 6.25 %?", StringComparison.Ordinal)));

    [Theory]
    [InlineData(CureMethod.ImmersionPickup, "nitrite × 10 % pick-up ÷ 4,535.9 g of pickle = 100 ppm")]
    [InlineData(CureMethod.Pumped, "nitrite × 10 % pump ÷ 4,535.9 g of pickle = 100 ppm")]
    [InlineData(CureMethod.ImmersionEquilibrium, "nitrite ÷ (40,823.3 g of meat + 4,535.9 g of pickle) = 100 ppm")]
    [InlineData(CureMethod.Dry, "nitrite ÷ 40,823.3 g of green weight = 111 ppm")]
    public void The_working_names_what_it_is_worked_on(CureMethod method, string line)
    {
        // 10 lb of pickle, 90 lb of meat, 0.01 lb (4.5359 g) of nitrite
        var question = Pickled(method, 10m, 10m, PureNitrite(0.01m)) with { Meat = Pounds(90m) };

        Assert.Equal(["Sodium nitrite: 4.5 g × 100 % = 4.5360 g nitrite", line], IngoingCure.Check(question).Working);
    }

    [Fact]
    public void The_working_of_the_most_goes_the_other_way()
    {
        // 16,197.7835 g / 6400 = 2.5309 g; / 0.0625 = 40.4945 g
        Assert.Equal(
            ["156.25 ppm × 16,197.8 g of meat block = 2.5309 g nitrite", "2.5309 g ÷ 6.25 % = 40.4945 g", "down to the scale of 0.1 g: 40.4 g"],
            Most(CureQuestion.Comminuted(Weight.FromPounds(35.71m), [])).Working);

        // 200 ppm of 1,000 g at 10 % is 2 g; 16 g of pink hold 1 g, kept to half a milligram
        var pumped = new CureQuestion(CureMethod.Pumped, [Of(Weight.FromGrams(16m))]) { Pickle = Grams(1000m), Pump = Proportion.FromPercent(10m) };
        Assert.Equal(
            [
                "200 ppm × 1,000.0 g of pickle ÷ 10 % pump = 2.0000 g nitrite",
                "less 1.0000 g that is in already = 1.0000 g",
                "1.0000 g ÷ 6.25 % = 16.0005 g",
                "down to the scale of 0.1 g: 16.0 g",
            ],
            Most(pumped).Working);
        Assert.StartsWith("200 ppm × (453.6 g of meat + 453.6 g of pickle) = ", Most(new CureQuestion(CureMethod.ImmersionEquilibrium, []) { Meat = Pounds(1m), Pickle = Pounds(1m) }).Working[0], StringComparison.Ordinal);
    }

    [Fact]
    public void A_figure_typed_finer_than_a_milligram_is_worked_as_typed()
    {
        var check = Check(Weight.FromPounds(1m), CureAmount.Of("Cure", 0.0371m, WeightUnit.Ounce, Pink, Proportion.Zero));

        Assert.Equal(decimal.Round(0.0371m * 0.0625m / 16m * 1_000_000m, 10), check.NitritePpm);
    }

    private static IEnumerable<string> Missing(CureMethod method) => new CureQuestion(method, []).Problems().Select(finding => finding.Field);

    private static MostCure Most(CureQuestion question) => CureDose.Most(question, Pink, Proportion.Zero, ScaleDivision.TenthGram);
}
