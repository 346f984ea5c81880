using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Formulas;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Kitchen;

/// <summary>Lots are received, chosen at the mixer, and put right.</summary>
public sealed class LarderTests : IClassFixture<KitchenFloor>
{
    private readonly KitchenFloor _floor;

    public LarderTests(KitchenFloor floor)
    {
        _floor = floor;
        Stock();
    }

    [Fact]
    public async Task A_lot_is_received_and_a_cure_is_asked_for_its_label()
    {
        using var desk = await _floor.SignIn(StaffRole.Kitchen, "Kitchen");
        var page = await (await desk.Open("/Kitchen/Receive")).Send("Put it on the shelf", ("Input.Ingredient", Id("Lot salt")), ("Input.Amount", "5 lb"), ("Input.LotCode", "P-77"));
        Assert.NotNull(page.Document.QuerySelector("#Input_Nitrite-problem"));

        page = await page.Send("Put it on the shelf", ("Input.Nitrite", "6.25"), ("Input.Nitrate", "0"), ("Input.Supplier", "Example Supply"));

        page.Expect("Lot P-77 is on the shelf.", "Lot salt", "5 lb left");
        Assert.Equal(Weight.FromPounds(5m), _floor.Read(records => records.IngredientLots.Single(lot => lot.LotCode == "P-77").Amount));
    }

    [Fact]
    public async Task What_is_low_stands_first_and_says_how_much_there_should_be()
    {
        using var desk = await _floor.SignIn(StaffRole.Kitchen, "Kitchen");

        var page = await desk.Open("/Kitchen/Larder");

        page.Expect("Lot pepper", "Low: at least 3 lb");
        Assert.Equal("Lot pepper", page.Document.QuerySelector("tbody th")!.TextContent.Trim());
    }

    [Fact]
    public async Task The_oldest_lot_is_proposed_and_what_was_weighed_comes_off_it()
    {
        var (load, old) = Mixable("Lot Taker", "P-1", "P-2");
        using var desk = await _floor.SignIn(StaffRole.Kitchen, "Kitchen");
        var page = await desk.Open($"/Kitchen/Load/{load}");
        Assert.Equal($"{old}", page.Form("Mixed").Value("Mix.Lines[1].Lot"));

        // 17.86 lb ÷ 400 = 20.25 g, down to 20.2 g.
        var mixed = await page.Send("Mixed", ("Mix.Fat", "5.36"), ("Mix.Lines[1].Weighed", "20.2"), ("Mix.Lines[1].Again", "20.2"), ("Mix.AsAsked", "true"));

        mixed.Expect("Load 1 is mixed.");
        Assert.Equal(Weight.FromGrams(20.2m), _floor.Read(records => records.LotUses.Single(use => use.LoadId == load).Amount));
        (await desk.Open($"/Kitchen/Load/{load}")).Expect("Lots: Lot salt P-1.");
        (await desk.Open($"/Kitchen/Lot/{old}")).Expect("Where it went", "Ring sausage");
    }

    [Fact]
    public async Task No_lot_noted_is_an_answer_and_a_lot_is_noted_later_and_struck_out()
    {
        var (load, lot) = Mixable("No Lot", "P-3", "P-4");
        using var desk = await _floor.SignIn(StaffRole.Kitchen, "Kitchen");
        (await (await desk.Open($"/Kitchen/Load/{load}")).Send("Mixed", ("Mix.Fat", "5.36"), ("Mix.Lines[1].Lot", ""), ("Mix.Lines[1].Weighed", "20.2"), ("Mix.Lines[1].Again", "20.2"), ("Mix.AsAsked", "true"))).Expect("Load 1 is mixed.");
        Assert.Empty(_floor.Read(records => records.LotUses.Where(use => use.LoadId == load).ToList()));

        var page = await (await desk.Open($"/Kitchen/MixedLots/{load}")).Send("Note it", ("Input.Lot", $"{lot}"));
        page.Expect("Lot P-3 is noted.", "0.045 lb"); // 20.2 g ÷ 453.59 g
        var use = _floor.Read(records => records.LotUses.Single(one => one.LoadId == load).Id);
        Assert.Contains("Say why it is struck out.", (await page.Send("Strike it out", ("Input.Use", $"{use}"))).Problems);
        (await page.Send("Strike it out", ("Input.Use", $"{use}"), ("Input.Because", "it was the other bag"))).Expect("Struck out: it was the other bag");
    }

    /// <summary>A load of ring sausage with its 12.50 lb of lean in it, and two lots of cure; the older one's id.</summary>
    private (int Load, int Lot) Mixable(string owner, string older, string newer)
    {
        var lots = new[] { (Code: older, Day: 1), (Code: newer, Day: 2) }.Select(lot => _floor.Do((records, act) => records.ReceiveLot(
            new LotReceipt(Cure(records).Id, lot.Code, new DateOnly(2026, 10, lot.Day), Weight.FromGrams(2_000m), 0, Proportion.FromPercent(6.25m), Proportion.Zero), act))).ToList();
        foreach (var other in _floor.Read(records => records.IngredientLots.Open().Where(lot => !lots.Contains(lot.Id)).Select(lot => lot.Id).ToList()))
            _floor.Do((records, act) => records.UseUpLot(other, act));
        var job = _floor.Job(owner);
        var load = _floor.Plan(job).Loads[0];
        _floor.Draw(load, job, 12.50m);
        return (load, lots[0]);
    }

    private string Id(string name) => $"{_floor.Read(records => records.Ingredients.Single(one => one.Name == name).Id)}";

    private static Ingredient Cure(RecordsContext records) => records.Ingredients.Single(one => one.Name == "Lot salt");

    /// <summary>Ring sausage gets a formula whose cure is an ingredient; once for the class.</summary>
    private void Stock()
    {
        if (_floor.Read(records => records.Ingredients.Any()))
            return;
        _floor.Write((records, act) =>
        {
            var cure = new Ingredient(new IngredientFacts("Lot salt", IngredientKind.Cure, Proportion.FromPercent(6.25m), Proportion.Zero));
            records.Ingredients.Add(new Ingredient(new IngredientFacts("Lot pepper", IngredientKind.Seasoning, Proportion.Zero, Proportion.Zero) { LeastOnHand = Weight.FromPounds(3m) }));
            var ring = records.Products.Include(product => product.Formulas).ThenInclude(formula => formula.Ingredients).Single(product => product.Name == "Ring sausage");
            var old = ring.Formulas.Single();
            ring.Reformulate(new FormulaVersion(
                act.Now, old.LeanShare, old.AddedFat, old.AddedFatIsPork, (old.LossLow, old.LossTypical, old.LossHigh), old.SmallestRun, old.Step,
                [
                    new FormulaIngredient(0, "Seasoning", FormulaBasis.PercentOfBlock, 3.75m, Proportion.Zero, Proportion.Zero, false),
                    new FormulaIngredient(1, cure, FormulaBasis.OuncesPer100Pounds, 4m),
                ]));
            records.SaveChanges();
            return Outcome.Done();
        });
    }
}
