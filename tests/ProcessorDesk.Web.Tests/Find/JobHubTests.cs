using System.Net;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Find;

/// <summary>All of one job, for whoever asks.</summary>
public sealed class JobHubTests(BusyShop shop) : IClassFixture<BusyShop>
{
    private async Task<Screen> Hub(int job, StaffRole role)
    {
        using var desk = await shop.SignIn(role);
        return await desk.Open($"/Find/Job/{job}");
    }

    [Theory]
    [InlineData(StaffRole.Clerk)]
    [InlineData(StaffRole.Cutter)]
    [InlineData(StaffRole.Kitchen)]
    [InlineData(StaffRole.Manager)]
    public async Task Every_hand_reads_where_the_job_is_and_whose(StaffRole role) =>
        (await Hub(shop.Hung, role)).Expect("Hanna Hung", "(608) 555-0101", "In the cooler", "White-tail deer, tag WI 111-22", "120.0 lb", "Not required", "Taken in by");

    [Fact]
    public async Task A_hold_stands_before_everything_else()
    {
        var page = await Hub(shop.Held, StaffRole.Clerk);

        page.Expect("On hold: waiting for the disease test", "Sampled, result pending");
        Assert.Equal("On hold: waiting for the disease test", page.Document.QuerySelector("main h2")!.TextContent);
    }

    [Fact]
    public async Task The_agreed_split_and_the_lean_are_shown()
    {
        var page = await Hub(shop.Agreed, StaffRole.Kitchen);

        page.Expect("30.00 lb of lean, agreed by", "Plain ground", "Deposit: $50.00", "Paid ahead");
    }

    [Theory]
    [InlineData(StaffRole.Cutter, "/Cutting/Sheet/", "/Pickup/Job/")]
    [InlineData(StaffRole.Clerk, "/Pickup/Job/", "/Cutting/Sheet/")]
    public async Task Only_stations_of_the_role_are_linked(StaffRole role, string open, string closed)
    {
        var links = (await Hub(shop.Agreed, role)).Document.QuerySelectorAll("main a").Select(link => link.GetAttribute("href")).ToList();

        Assert.Contains(links, link => link!.StartsWith(open, StringComparison.Ordinal));
        Assert.DoesNotContain(links, link => link!.StartsWith(closed, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Every_link_leads_somewhere()
    {
        using var desk = await shop.SignIn(StaffRole.Manager);
        var page = await desk.Open($"/Find/Job/{shop.Agreed}");

        foreach (var link in page.Document.QuerySelectorAll("main a").Select(link => link.GetAttribute("href")!).Where(link => link.StartsWith('/')))
            Assert.True((await desk.Open(link)).Status == HttpStatusCode.OK, link);
    }

    [Fact]
    public async Task The_codes_of_its_tickets_are_listed() =>
        (await Hub(shop.Fresh, StaffRole.Cutter)).Expect(shop.TicketOf(TicketKind.Claim, shop.Fresh).Code.Print(), "Claim ticket", "Carcass ticket");

    [Fact]
    public async Task A_job_that_is_not_there_is_not_found() =>
        Assert.Equal(HttpStatusCode.NotFound, (await Hub(987_654, StaffRole.Clerk)).Status);
}
