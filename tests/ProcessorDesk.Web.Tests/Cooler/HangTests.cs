using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Web.Tests.Cutting;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Cooler;

public sealed class HangTests(ShopUnderTest shop) : IClassFixture<ShopUnderTest>
{
    [Fact]
    public async Task A_carcass_gets_its_rail_and_its_hot_weight()
    {
        var (job, animals) = shop.TakeIn("Ada Fenn", 128.5m);
        using var desk = await shop.SignIn(StaffRole.Cutter, "Cooler");

        var page = await (await desk.Open($"/Cooler/Hang/{animals[0]}")).Send("Save it", ("Input.Rail", "B4"), ("Input.Weight", "96.5"));

        page.Expect("Hanging, hot: 96.5 lb.", "Rail B4");
        var animal = shop.Read(records => records.Animals.Single(one => one.Id == animals[0]));
        Assert.Equal(("B4", shop.Clock.GetUtcNow().UtcDateTime), (animal.Rail, animal.HungAt));
        Assert.Equal(Weight.FromPounds(96.5m), shop.WeightsOf(job).Animals[0].HotHanging);
    }

    [Fact]
    public async Task The_shrink_from_hot_to_chilled_is_shown_with_what_is_published()
    {
        var (_, animals) = shop.TakeIn("Ada Fenn", 128.5m);
        using var desk = await shop.SignIn(StaffRole.Cutter, "Cooler");
        await (await desk.Open($"/Cooler/Hang/{animals[0]}")).Send("Save it", ("Input.Weight", "100"));

        var page = await (await desk.Open($"/Cooler/Hang/{animals[0]}")).Send("Save it", ("Input.Weight", "98.5"));

        // 100.0 - 98.5 = 1.5 lb of 100.0 lb.
        page.Expect("Hanging, chilled: 98.5 lb.", "1.5 lb, 1.5 % of the hot weight.", "1.35 % to 1.98 %", "Fitzhenry 2019");
    }

    [Fact]
    public async Task More_than_it_came_in_with_is_asked_about_once()
    {
        var (job, animals) = shop.TakeIn("Ada Fenn", 96m);
        using var desk = await shop.SignIn(StaffRole.Cutter, "Cooler");

        var asked = await (await desk.Open($"/Cooler/Hang/{animals[0]}")).Send("Save it", ("Input.Rail", "A1"), ("Input.Weight", "106"));

        Assert.Equal(["106.0 lb is more than the 96.0 lb it came in with. Type it again, or say that it is right."], asked.Problems);
        Assert.Equal(("A1", "106"), (asked.Form("Save it").Value("Input.Rail"), asked.Form("Save it").Value("Input.Weight")));
        Assert.Null(shop.WeightsOf(job).Animals[0].HotHanging);

        (await asked.Send("Save it", ("Input.Sure", "true"))).Expect("Hanging, hot: 106.0 lb.");
    }

    [Fact]
    public async Task Weighing_again_needs_a_reason_and_strikes_the_first()
    {
        var (job, animals) = shop.TakeIn("Ada Fenn", 128.5m);
        using var desk = await shop.SignIn(StaffRole.Cutter, "Cooler");
        await (await desk.Open($"/Cooler/Hang/{animals[0]}")).Send("Save it", ("Input.Weight", "69"));

        var asked = await (await desk.Open($"/Cooler/Hang/{animals[0]}")).Send("Save it", ("Input.Kind", "HotHanging"), ("Input.Weight", "96"));
        Assert.Contains("69.0 lb stands for this. Say why", Assert.Single(asked.Problems), StringComparison.Ordinal);
        var page = await asked.Send("Save it", ("Input.Because", "figures swapped"));

        page.Expect("Struck out: figures swapped");
        Assert.Equal(Weight.FromPounds(96m), shop.WeightsOf(job).Animals[0].HotHanging);
        Assert.Equal(2, shop.Read(records => records.WeighIns.Count(one => one.AnimalId == animals[0] && one.Kind == WeighInKind.HotHanging)));
    }

    [Fact]
    public async Task A_second_press_books_nothing_twice_and_asks_for_no_reason()
    {
        var (_, animals) = shop.TakeIn("Ada Fenn", 128.5m);
        using var desk = await shop.SignIn(StaffRole.Cutter, "Cooler");
        var form = await desk.Open($"/Cooler/Hang/{animals[0]}");
        await form.Send("Save it", ("Input.Kind", "HotHanging"), ("Input.Weight", "96"));

        var again = await form.Press("Save it");

        Assert.Empty(again.Problems);
        again.Expect("This was saved already");
        Assert.Equal(1, shop.Read(records => records.WeighIns.Count(one => one.AnimalId == animals[0] && one.Kind == WeighInKind.HotHanging)));
    }

    [Fact]
    public async Task A_weight_is_kept_in_the_rail_scales_steps()
    {
        var (job, animals) = shop.TakeIn("Ada Fenn", 128.5m);
        using var desk = await shop.SignIn(StaffRole.Cutter, "Cooler");

        await (await desk.Open($"/Cooler/Hang/{animals[0]}")).Send("Save it", ("Input.Weight", "96 lb 4 oz"));

        // 96 4/16 lb is 96.25; on steps of 0.5 lb halves go away from zero: 96.5.
        Assert.Equal(Weight.FromPounds(96.5m), shop.WeightsOf(job).Animals[0].HotHanging);
    }

    [Fact]
    public async Task The_arrival_weight_is_offered_only_while_there_is_none()
    {
        var (_, weighed) = shop.TakeIn("Ada Fenn", 128.5m);
        var (job, _) = shop.TakeIn("Bo Vance");
        var found = shop.Write((records, act) =>
        {
            var animal = new Animal(Species.WhiteTailDeer, ArrivalState.Unknown, act.Now);
            animal.ShareWith(records.Jobs.Single(one => one.Id == job), Ratio.One, Portion.Whole);
            records.Animals.Add(animal);
            records.SaveChanges();
            return Outcome.Done(animal.Id);
        }).Result;
        using var desk = await shop.SignIn(StaffRole.Cutter, "Cooler");

        Assert.Null((await desk.Open($"/Cooler/Hang/{weighed[0]}")).Document.QuerySelector("[value=Arrival]"));
        var page = await (await desk.Open($"/Cooler/Hang/{found}")).Send("Save it", ("Input.Kind", "Arrival"), ("Input.Weight", "88"));

        page.Expect("Arrival: 88.0 lb.", "Not hung yet.");
        Assert.Equal(Weight.FromPounds(88m), shop.WeightsOf(job).Animals[0].Arrival);
    }
}
