using System.Globalization;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Grinding;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Counter;

public sealed class DropOffTests(CounterShop shop) : IClassFixture<CounterShop>
{
    [Fact]
    public async Task A_new_owner_with_one_deer_is_taken_in_with_everything_that_was_typed()
    {
        using var desk = await shop.SignIn(StaffRole.Clerk);
        var page = await desk.Open("/Counter/DropOff");

        page = await page.Send("Take it in",
            ("Input.Owner.Name", "Zoë Quist"), ("Input.Owner.Phone", "(715) 555-0100"), ("Input.Owner.Address", "2 Pine Lane"),
            ("Input.People[0].Name", "Old Quist"),
            ("Input.Animals[0].Tag", "WT-0417"), ("Input.Animals[0].State", "FieldDressed"), ("Input.Animals[0].Weight", "128.5"),
            ("Input.Animals[0].Sex", "Male"), ("Input.Animals[0].HarvestedOn", "2026-11-26"), ("Input.Animals[0].Area", "Unit 58"),
            ("Input.Animals[0].Parts", "Antlers"), ("Input.Animals[0].Parts", "Heart"),
            ("Input.Order.Style", "steaks"), ("Input.Order.Cuts[0].Cut", "roast"), ("Input.Order.Cuts[0].Detail", "3 lb"),
            ("Input.Order.Asks[0].ProductId", Id("Ring sausage")), ("Input.Order.Asks[0].Kind", "OwnLean"), ("Input.Order.Asks[0].Amount", "25"),
            ("Input.Order.Asks[1].ProductId", Id("Plain ground")), ("Input.Order.Asks[1].Kind", "Rest"),
            ("Input.Order.Notes", "Call before noon"), ("Input.Deposit.Amount", "50"));

        Assert.Empty(page.Problems);
        var job = shop.Read(records => records.Jobs
            .Include(one => one.Owner).Include(one => one.CutOrder).Include(one => one.Asks).Include(one => one.People)
            .Include(one => one.Shares).ThenInclude(share => share.Animal).ThenInclude(animal => animal.Parts)
            .Include(one => one.Shares).ThenInclude(share => share.Animal).ThenInclude(animal => animal.Holds)
            .Include(one => one.PriceList)
            .OrderBy(one => one.Id).Last(one => one.Owner.Name == "Zoë Quist"));
        page.Expect($"Job {job.Number} is taken in", "Zoë Quist", "WT-0417", "128.5 lb", "Antlers, Heart", "promised for Fri 11 Dec");
        Assert.True(job.DetailsComplete);
        Assert.Equal("Call before noon", job.Notes);
        Assert.Equal(("Hunter", "Old Quist"), (Wording.Of(job.People.Single().Role), job.People.Single().Name));
        Assert.Equal(["roast", "grind", "steak", "whole", "grind", "steak", "grind"], job.CutOrder.OrderBy(line => line.Position).Select(line => line.Cut));
        Assert.Equal([(AskKind.OwnLean, Weight.FromPounds(25m)), (AskKind.Rest, Weight.Zero)], job.Asks.OrderBy(ask => ask.Position).Select(ask => (ask.Kind, ask.Amount)));
        Assert.Equal("Autumn", job.PriceList.Name);
        Assert.NotNull(job.PriceList.UsedAt);
        var share = Assert.Single(job.Shares);
        Assert.Equal(Ratio.One, share.Fraction);
        Assert.Empty(share.Animal.Holds);
        Assert.Equal(new DateOnly(2026, 11, 26), share.Animal.HarvestedOn);
        Assert.Equal(Weight.FromPounds(128.5m), shop.Read(records => records.WeighIns.Single(one => one.AnimalId == share.AnimalId)).Net);
        var deposit = shop.Read(records => records.Payments.Single(one => one.JobId == job.Id));
        Assert.Equal((Money.FromDollars(50m), true), (deposit.Amount, deposit.IsDeposit));
        int[] parts = [.. share.Animal.Parts.Select(part => part.Id)];
        Assert.Equal(
            [TicketKind.Claim, TicketKind.Carcass, TicketKind.Part, TicketKind.Part],
            shop.Read(records => records.Tickets
                .Where(one => (one.Kind == TicketKind.Claim && one.TargetId == job.Id) || (one.Kind == TicketKind.Carcass && one.TargetId == share.AnimalId) || (one.Kind == TicketKind.Part && parts.Contains(one.TargetId)))
                .OrderBy(one => one.Number).Select(one => one.Kind).ToList()));
    }

    [Fact]
    public async Task A_second_press_a_reload_and_the_back_button_make_no_second_job()
    {
        using var desk = await shop.SignIn(StaffRole.Clerk);
        var filled = await desk.Open("/Counter/DropOff");
        foreach (var (name, value) in Least("Twice Pressed"))
            filled.Form("Take it in").Fill(name, value);
        var before = shop.Jobs;

        var first = await filled.Press("Take it in");
        var second = await filled.Press("Take it in");

        Assert.Equal(before + 1, shop.Jobs);
        Assert.Equal(first.Path, second.Path);
        Assert.StartsWith("/Counter/TakenIn/", first.Path, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_back_button_to_the_page_before_another_animal_was_added_makes_no_second_job()
    {
        using var desk = await shop.SignIn(StaffRole.Clerk);
        var one = await desk.Open("/Counter/DropOff");
        foreach (var (name, value) in Least("Back Again"))
            one.Form("Take it in").Fill(name, value);
        var two = await one.Press("Add another animal");
        var before = shop.Jobs;
        var taken = await two.Send("Take it in", ("Input.Animals[1].Tag", "B-2"), ("Input.Animals[1].State", "Whole"));

        var again = await one.Press("Take it in");

        taken.Expect("T-9", "B-2");
        Assert.Equal(taken.Path, again.Path);
        Assert.Equal(before + 1, shop.Jobs);
    }

    [Fact]
    public async Task What_was_typed_stays_when_something_is_wrong()
    {
        using var desk = await shop.SignIn(StaffRole.Clerk);
        var page = await desk.Open("/Counter/DropOff");

        page = await page.Send("Take it in",
            ("Input.Owner.Name", "Half Done"), ("Input.Owner.Phone", "12"), ("Input.Animals[0].Tag", "T-1"), ("Input.Animals[0].Weight", "heavy"),
            ("Input.Order.Asks[0].ProductId", Id("Ring sausage")), ("Input.Order.Asks[0].Kind", "Finished"), ("Input.Order.Asks[0].Amount", "lots"),
            ("Input.Order.Notes", "Two lines\nof notes"));

        var form = page.Form("Take it in");
        Assert.Equal(
            ["Half Done", "12", "T-1", "heavy", "lots", "Two lines\nof notes"],
            new[] { "Input.Owner.Name", "Input.Owner.Phone", "Input.Animals[0].Tag", "Input.Animals[0].Weight", "Input.Order.Asks[0].Amount", "Input.Order.Notes" }
                .Select(name => form.Value(name).ReplaceLineEndings("\n")));
        Assert.Contains(page.Problems, problem => problem.Contains("seven digits", StringComparison.Ordinal));
        Assert.Contains(page.Problems, problem => problem.Contains("Choose how it came in", StringComparison.Ordinal));
        Assert.Contains(page.Problems, problem => problem.Contains("\"heavy\"", StringComparison.Ordinal));
        Assert.Contains(page.Problems, problem => problem.Contains("\"lots\"", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_signed_out_drop_off_is_kept_through_the_door_and_saved_once()
    {
        using var desk = await shop.SignIn(StaffRole.Clerk);
        var page = await desk.Open("/Counter/DropOff");
        foreach (var (name, value) in Least("Signed Out"))
            page.Form("Take it in").Fill(name, value);
        desk.ForgetSignIn();
        var before = shop.Jobs;

        var door = await page.Press("Take it in");
        Assert.Equal(before, shop.Jobs);
        var after = await door.Send("Sign in", ("Input.StaffId", shop.StaffOf(StaffRole.Clerk).ToString(CultureInfo.InvariantCulture)), ("Input.Station", "Counter"), ("Input.Pin", Desk.Pin));
        after.Expect("Signed Out");
        var saved = await after.Press("Send it again");

        saved.Expect("is taken in", "Signed Out");
        Assert.Equal(before + 1, shop.Jobs);
    }

    [Fact]
    public async Task Ticket_now_takes_name_phone_tag_and_weight_and_leaves_the_details_for_later()
    {
        using var desk = await shop.SignIn(StaffRole.Clerk);
        var page = await desk.Open("/Counter/DropOff");

        page = await page.Send("Ticket now, details after",
            ("Input.Owner.Name", "Long Line"), ("Input.Owner.Phone", "7155550111"), ("Input.Animals[0].Tag", "LL-1"), ("Input.Animals[0].Weight", "96"));

        page.Expect("The details are still missing", "LL-1", "96.0 lb");
        Assert.False(shop.Read(records => records.Jobs.Single(job => job.Owner.Name == "Long Line").DetailsComplete));
    }

    [Fact]
    public async Task A_no_pork_order_refuses_a_product_with_pork_in_words()
    {
        using var desk = await shop.SignIn(StaffRole.Clerk);
        var page = await desk.Open("/Counter/DropOff");
        foreach (var (name, value) in Least("No Pork"))
            page.Form("Take it in").Fill(name, value);

        var refused = await page.Send("Take it in",
            ("Input.Order.NoPork", "true"), ("Input.Order.Asks[0].ProductId", Id("Hot sausage")), ("Input.Order.Asks[0].Amount", "10"));
        var taken = await refused.Send("Take it in", ("Input.Order.Asks[0].ProductId", Id("Suet patties")));

        Assert.Equal(["Hot sausage has pork in it, and this order is marked no pork. Choose another product, or take the mark off."], refused.Problems);
        taken.Expect("is taken in");
        Assert.True(shop.Read(records => records.Jobs.Single(job => job.Owner.Name == "No Pork").NoPork));
    }

    [Fact]
    public async Task Older_cattle_get_no_cut_through_the_backbone()
    {
        using var desk = await shop.SignIn(StaffRole.Clerk);
        var page = await desk.Open("/Counter/DropOff");
        foreach (var (name, value) in Least("Cattle Farm"))
            page.Form("Take it in").Fill(name, value);

        var refused = await page.Send("Take it in", ("Input.Animals[0].Species", "Beef"), ("Input.Order.Cuts[2].Cut", "chop"));
        var taken = await refused.Send("Take it in", ("Input.Animals[0].CattleAge", "UnderThirtyMonths"));

        Assert.Contains("9 CFR 310.22", Assert.Single(refused.Problems), StringComparison.Ordinal);
        taken.Expect("is taken in");
    }

    private string Id(string product) => shop.ProductId(product).ToString(CultureInfo.InvariantCulture);

    private static (string Name, string Value)[] Least(string owner) =>
    [
        ("Input.Owner.Name", owner), ("Input.Owner.Phone", "715 555 0199"), ("Input.Animals[0].Tag", "T-9"),
        ("Input.Animals[0].State", "FieldDressed"), ("Input.Animals[0].Weight", "100"),
    ];
}
