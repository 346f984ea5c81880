using ProcessorDesk.Records;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Kitchen;

public sealed class WeighTests(KitchenFloor shop) : IClassFixture<KitchenFloor>
{
    [Fact]
    public async Task Load_by_load_it_adds_up_and_shows_how_it_will_go_back()
    {
        var job = shop.Job("Ann Bower");
        var batch = shop.MixedRing(job);
        var loads = shop.Read(records => records.Loads.Where(load => load.BatchId == batch).OrderBy(load => load.Number).Select(load => load.Id).ToList());
        using var desk = await shop.SignIn(StaffRole.Kitchen, "Kitchen");
        var page = await desk.Open($"/Kitchen/Weigh/{batch}");
        page.Expect("37.14 lb green, as drawn", "Expected 32.68 lb to 34.17 lb"); // 37.14 less 12 % and less 8 %

        page = await page.Send("Save the weight", ("Input.Load", $"{loads[0]}"), ("Input.Gross", "20.60"), ("Input.Tare", "4.00"));
        page.Expect("16.60 lb saved.", "Load 1");
        var mixed = await page.Send("Save the weight", ("Input.Load", ""), ("Input.Gross", "16"));
        Assert.Contains(mixed.Problems, problem => problem.StartsWith("The finished weight was begun the other way", StringComparison.Ordinal));
        page = await page.Send("Save the weight", ("Input.Load", $"{loads[1]}"), ("Input.Gross", "16.50"));

        (await desk.Open($"/Kitchen/Batch/{batch}")).Expect("How it will go back", "Ann Bower", "33.10 lb"); // 16.60 + 16.50
    }

    [Fact]
    public async Task More_than_went_in_is_asked_about_once()
    {
        var batch = shop.MixedHot(shop.Job("Bud Cask"));
        using var desk = await shop.SignIn(StaffRole.Kitchen, "Kitchen");

        var asked = await (await desk.Open($"/Kitchen/Weigh/{batch}")).Send("Save the weight", ("Input.Gross", "149"));
        asked.Expect("With 149.00 lb more comes out than the 15.00 lb of green weight that went in.");
        Assert.Equal("149", asked.Form("Save the weight").Value("Input.Gross"));
        var saved = await asked.Send("Save the weight", ("Input.Sure", "true"));

        saved.Expect("149.00 lb saved.");
    }

    [Fact]
    public async Task A_wrong_weight_is_struck_and_less_than_its_tare_is_none()
    {
        var batch = shop.MixedHot(shop.Job("Cam Dray"));
        using var desk = await shop.SignIn(StaffRole.Kitchen, "Kitchen");
        var page = await desk.Open($"/Kitchen/Weigh/{batch}");

        (await page.Send("Save the weight", ("Input.Gross", "1"), ("Input.Tare", "2"))).Expect("more than its tare");
        page = await (await desk.Open($"/Kitchen/Weigh/{batch}")).Send("Save the weight", ("Input.Gross", "14.90"));
        var weighIn = shop.Read(records => records.WeighIns.Single(one => one.BatchId == batch).Id);
        Assert.Contains("Say why the weight is wrong.", (await page.Send("Strike it out", ("Input.StrikeId", $"{weighIn}"))).Problems);
        var struck = await page.Send("Strike it out", ("Input.StrikeId", $"{weighIn}"), ("Input.StrikeBecause", "a pan lay under it"));

        struck.Expect("The weight is struck out.", "a pan lay under it");
    }

    [Fact]
    public async Task Pooled_owners_see_their_shares_before_the_release_and_they_sum()
    {
        var one = shop.Job("Dot Eames", Pooling.Pooled);
        var two = shop.Job("Eda Finch", Pooling.Pooled);
        var (batch, loads) = shop.Plan("Hot sausage", one, two);
        foreach (var (load, job) in loads.Zip([one, two]))
        {
            shop.Draw(load, job, 11.03m);
            shop.Do((records, act) => records.MixLoad(new MixOrder(
                load, Trade.Weight.FromPounds(3.68m), new Dictionary<int, (Trade.Weight, Trade.WeightUnit)> { [0] = (Trade.Weight.FromGrams(133.4m), Trade.WeightUnit.Gram) }), false, act));
        }

        using var desk = await shop.SignIn(StaffRole.Kitchen, "Kitchen");
        await (await desk.Open($"/Kitchen/Weigh/{batch}")).Send("Save the weight", ("Input.Gross", "29.81"));

        var page = await desk.Open($"/Kitchen/Batch/{batch}");

        // 2,981 divisions by 15.00 : 15.00; the odd one to the first.
        page.Expect("14.91 lb", "14.90 lb", "29.81 lb");
    }
}
