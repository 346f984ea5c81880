using ProcessorDesk.Records;
using ProcessorDesk.Web.Tests.Grind;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Pickup;

public sealed class PickupListTests(TrimmedShop shop) : IClassFixture<TrimmedShop>
{
    [Fact]
    public async Task A_job_is_listed_by_what_of_it_can_go()
    {
        var (ready, part, none) = (MadeJob.Boxed(shop, "Rae Ready"), MadeJob.Agree(shop, "Pat Part"), MadeJob.Agree(shop, "Nia None"));
        MadeJob.Make(shop, part, "Hot sausage");
        MadeJob.Box(shop, part, "Hot sausage");
        using var desk = await shop.SignIn(StaffRole.Clerk, "Pickup");

        var page = await desk.Open("/Pickup");

        Assert.Contains("Rae Ready (608)".Replace(" (608)", "", StringComparison.Ordinal), List(page, "All in boxes"), StringComparison.Ordinal);
        Assert.Contains("4 boxes Since today Not invoiced", List(page, "All in boxes"), StringComparison.Ordinal);
        Assert.Contains("Pat Part", List(page, "Some of it could go"), StringComparison.Ordinal);
        Assert.Contains("1 box", List(page, "Some of it could go"), StringComparison.Ordinal);
        Assert.DoesNotContain("Nia None", page.Text, StringComparison.Ordinal);
        Assert.NotEqual((ready, part), (none, none));
    }

    [Fact]
    public async Task One_that_waits_past_the_shops_days_is_unclaimed()
    {
        MadeJob.Boxed(shop, "Una Claimed");
        using var desk = await shop.SignIn(StaffRole.Clerk, "Pickup");
        shop.Clock.Advance(TimeSpan.FromDays(30)); // the shop's days out of the box
        Assert.DoesNotContain("Unclaimed", Row(await desk.Open("/Pickup"), "Una Claimed"), StringComparison.Ordinal);

        shop.Clock.Advance(TimeSpan.FromDays(1));

        Assert.Contains("31 days Unclaimed", Row(await desk.Open("/Pickup"), "Una Claimed"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_left_owing_stays_listed_until_it_is_paid()
    {
        var job = MadeJob.Boxed(shop, "Ovid Owing");
        using var desk = await shop.SignIn(StaffRole.Clerk, "Pickup");
        await (await desk.Open($"/Pickup/Job/{job}")).Press("Issue the invoice");
        var goods = shop.Read(records => records.GoodsOf(job));
        shop.Write(
            (records, act) => records.HandOver(new HandOverOrder(job, [.. goods.BoxesHere.Select(box => box.Id)], [.. goods.PartsHere.Select(part => part.Id)], "Ovid Owing", Owing: true), act),
            new Hand(shop.StaffOf(StaffRole.Clerk), "Pickup"));

        var page = await desk.Open("/Pickup");
        Assert.Contains("Ovid Owing", List(page, "Left with money owed"), StringComparison.Ordinal);
        Assert.Contains("$498.88", List(page, "Left with money owed"), StringComparison.Ordinal);
        Assert.Contains("Ovid Owing", List(page, "Handed over lately"), StringComparison.Ordinal);
        await (await desk.Open($"/Pickup/Job/{job}")).Send("Book it", ("Paying.Amount", "498.88"));

        Assert.DoesNotContain("Ovid Owing", List(await desk.Open("/Pickup"), "Left with money owed"), StringComparison.Ordinal);
    }

    private static string List(Screen page, string caption) => Words(
        page.Document.QuerySelectorAll("table").FirstOrDefault(table => table.QuerySelector("caption")!.TextContent.Contains(caption, StringComparison.Ordinal))?.TextContent);

    private static string Row(Screen page, string owner) => Words(page.Document.QuerySelectorAll("tr").Single(row => row.TextContent.Contains(owner, StringComparison.Ordinal)).TextContent);

    private static string Words(string? text) => string.Join(' ', (text ?? "").Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
