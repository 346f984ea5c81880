using System.Globalization;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Counter;

public sealed class OrderTests(CounterShop shop) : IClassFixture<CounterShop>
{
    [Fact]
    public async Task Details_left_for_later_are_completed_here()
    {
        using var desk = await shop.SignIn(StaffRole.Clerk);
        var id = await TakeIn(desk, "Later Lou", "Ticket now, details after");

        var page = await desk.Open($"/Counter/Order/{id}");
        page.Expect("Saving this order completes it");
        page = await page.Send("Save the order", ("Input.Style", "mixed"), ("Input.Asks[0].ProductId", Id("Hot sausage")), ("Input.Asks[0].Amount", "10"));

        page.Expect("The order is complete.");
        var job = Job(id);
        Assert.True(job.DetailsComplete);
        Assert.Equal(1, job.SheetRevision);
        Assert.Equal(["roast", "roast", "butterfly", "whole", "grind", "steak", "grind"], job.CutOrder.OrderBy(line => line.Position).Select(line => line.Cut));
    }

    [Fact]
    public async Task A_change_raises_the_sheet_and_saving_without_one_does_not()
    {
        using var desk = await shop.SignIn(StaffRole.Clerk);
        var id = await TakeIn(desk, "Changer");

        var same = await (await desk.Open($"/Counter/Order/{id}")).Press("Save the order");
        same.Expect("The order stands as it was.");
        Assert.Equal(1, Job(id).SheetRevision);

        var changed = await same.Send("Save the order", ("Input.Cuts[2].Cut", "steak"), ("Input.Cuts[2].Detail", "1 in"), ("Input.Cuts[2].PerPack", "4"));
        changed.Expect("this is revision 2");
        var line = Job(id).CutOrder.Single(one => one.Group == "loin");
        Assert.Equal(("steak", "1 in", 4), (line.Cut, line.Detail, line.PerPack));
    }

    [Fact]
    public async Task Rows_are_added_moved_and_taken_out_without_script_and_blank_ones_are_ignored()
    {
        using var desk = await shop.SignIn(StaffRole.Clerk);
        var id = await TakeIn(desk, "Mover");
        var page = await desk.Open($"/Counter/Order/{id}");

        page = await page.Send("Another line",
            ("Input.Asks[0].ProductId", Id("Hot sausage")), ("Input.Asks[0].Amount", "10"),
            ("Input.Asks[1].ProductId", Id("Ring sausage")), ("Input.Asks[1].Amount", "20"));
        page.Form("Save the order").Fill("Input.Asks[2].ProductId", Id("Suet patties"));
        page.Form("Save the order").Fill("Input.Asks[2].Amount", "5");
        page = await Press(desk, page, "Move line 2 up");
        page = await Press(desk, page, "Take line 3 out");
        page = await page.Press("Another line");
        page = await page.Press("Save the order");

        page.Expect("The order is changed");
        Assert.Equal(
            [(shop.ProductId("Ring sausage"), 20m), (shop.ProductId("Hot sausage"), 10m)],
            Job(id).Asks.OrderBy(ask => ask.Position).Select(ask => (ask.ProductId, decimal.Round(ask.Amount.Pounds, 4))));
    }

    [Fact]
    public async Task Somebody_elses_save_is_shown_beside_and_the_person_chooses()
    {
        using var one = await shop.SignIn(StaffRole.Clerk);
        using var two = await shop.SignIn(StaffRole.Manager);
        var id = await TakeIn(one, "Stale Sam");
        var mine = await one.Open($"/Counter/Order/{id}");
        await (await two.Open($"/Counter/Order/{id}")).Send("Save the order", ("Input.Notes", "Theirs"));

        var both = await mine.Send("Save the order", ("Input.Notes", "Mine"));
        both.Expect("What somebody else saved meanwhile", "Theirs");
        Assert.Equal("Mine", both.Form("Save the order").Value("Input.Notes"));
        Assert.Equal("Theirs", Job(id).Notes);

        await both.Press("Save the order");
        Assert.Equal("Mine", Job(id).Notes);
    }

    [Fact]
    public async Task After_the_first_knife_the_cuts_stay_and_the_rest_can_still_change()
    {
        using var desk = await shop.SignIn(StaffRole.Clerk);
        var id = await TakeIn(desk, "Under Knife");
        shop.Write((records, act) => records.Jobs.Single(job => job.Id == id).StartCutting(act.Now) is { } stop ? Outcome.Refused(stop) : Outcome.Done());

        var page = await desk.Open($"/Counter/Order/{id}");
        page.Expect("Cutting has started, so the cut order is locked");
        page = await page.Send("Save the order", ("Input.Notes", "Bones for the dog"));

        page.Expect("The order is changed");
        Assert.Equal("Bones for the dog", Job(id).Notes);
        Assert.All(Job(id).CutOrder, line => Assert.Equal("grind", line.Cut));
    }

    [Fact]
    public async Task Another_animal_joins_until_the_split_is_agreed_and_then_no_more()
    {
        using var desk = await shop.SignIn(StaffRole.Clerk);
        var id = await TakeIn(desk, "Joiner");

        var page = await desk.Open($"/Counter/DropOff?job={id}");
        page.Expect("Another animal for job");
        page = await page.Send("Take it in too", ("Input.Animals[0].Tag", "J-2"), ("Input.Animals[0].State", "FieldDressed"), ("Input.Animals[0].Weight", "96"));
        page.Expect("J-2", "J-1");
        Assert.Equal(2, Job(id).Shares.Count);
        Assert.All(Job(id).Shares, share => Assert.Equal(Ratio.One, share.Fraction));
        var open = await desk.Open($"/Counter/DropOff?job={id}");

        shop.Write((records, act) =>
        {
            records.Jobs.Single(job => job.Id == id).AgreeSplit(act.Now);
            return Outcome.Done();
        });
        var refused = await open.Send("Take it in too", ("Input.Animals[0].Tag", "J-3"), ("Input.Animals[0].State", "Whole"));

        refused.Expect("No animal can join job", "New drop-off for this owner");
        Assert.Contains("The split of this job is agreed", Assert.Single(refused.Problems), StringComparison.Ordinal);
        Assert.Equal(2, Job(id).Shares.Count);
    }

    private string Id(string product) => shop.ProductId(product).ToString(CultureInfo.InvariantCulture);

    private Job Job(int id) => shop.Read(records => records.Jobs.Include(job => job.CutOrder).Include(job => job.Asks).Include(job => job.Shares).Single(job => job.Id == id));

    private async Task<int> TakeIn(Desk desk, string owner, string button = "Take it in")
    {
        var page = await desk.Open("/Counter/DropOff");
        await page.Send(button,
            ("Input.Owner.Name", owner), ("Input.Owner.Phone", "715 555 0123"), ("Input.Animals[0].Tag", "J-1"),
            ("Input.Animals[0].State", "FieldDressed"), ("Input.Animals[0].Weight", "100"));
        return shop.Read(records => records.Jobs.Single(job => job.Owner.Name == owner).Id);
    }

    /// <summary>Presses a button that shows a sign and is named for a screen reader.</summary>
    private static Task<Screen> Press(Desk desk, Screen page, string name)
    {
        var button = page.Document.QuerySelectorAll("button").OfType<AngleSharp.Html.Dom.IHtmlButtonElement>().Single(one => one.GetAttribute("aria-label") == name);
        return desk.Ask(button.Form!.Submission(button));
    }
}
