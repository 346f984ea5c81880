using System.Net;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Safety;

public sealed class RefusalTests(ShopUnderTest shop) : IClassFixture<ShopUnderTest>
{
    [Fact]
    public async Task An_address_that_leads_nowhere_says_so_and_shows_the_way_on()
    {
        using var desk = await shop.SignIn(StaffRole.Manager);

        var page = await desk.Open("/no/such/page");

        Assert.Equal(HttpStatusCode.NotFound, page.Status);
        Assert.Equal("There is no such page", page.Heading);
        Assert.NotNull(page.Document.QuerySelector("main a[href='/Today']"));
    }

    [Theory]
    [InlineData("Sec-Fetch-Site", "cross-site")]
    [InlineData("Sec-Fetch-Site", "same-site")]
    [InlineData("Origin", "http://elsewhere.example")]
    [InlineData("Origin", "null")]
    public async Task A_form_from_another_site_is_refused_with_nothing_done(string header, string value)
    {
        using var desk = await shop.SignIn(StaffRole.Manager, "Office");
        var open = await desk.Open("/Me");
        open.Form("Move here").Fill("Input.Station", "Cutting");
        var request = open.Form("Move here").Submission(open.Button("Move here"));
        request.Headers.Add(header, value);

        var page = await desk.Ask(request);

        Assert.Equal(HttpStatusCode.Forbidden, page.Status);
        page.Expect("sent from another site");
        (await desk.Open("/Me")).Expect("at Office");
    }

    [Fact]
    public async Task A_form_from_the_shops_own_page_is_taken()
    {
        using var desk = await shop.SignIn(StaffRole.Manager, "Office");
        var open = await desk.Open("/Me");
        open.Form("Move here").Fill("Input.Station", "Cutting");
        var request = open.Form("Move here").Submission(open.Button("Move here"));
        request.Headers.Add("Sec-Fetch-Site", "same-origin");
        request.Headers.Add("Origin", shop.Address.GetLeftPart(UriPartial.Authority));

        (await desk.Ask(request)).Expect("This screen is now at Cutting.");
    }

    [Fact]
    public async Task No_page_may_run_or_load_what_is_not_the_shops_own()
    {
        using var desk = await shop.SignIn(StaffRole.Manager);

        var page = await desk.Open("/Me");

        var policy = page.Headers["Content-Security-Policy"];
        Assert.StartsWith("default-src 'none'; script-src 'self'; style-src 'self';", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("unsafe", policy, StringComparison.Ordinal);
        Assert.Empty(page.Document.QuerySelectorAll("[style], style, script:not([src]), [onclick], [onsubmit]"));
        Assert.Equal("nosniff", page.Headers["X-Content-Type-Options"]);
        Assert.Contains("no-store", page.Headers["Cache-Control"], StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_part_of_a_page_asked_for_by_a_stranger_is_refused_without_a_page()
    {
        using var desk = shop.Stranger();
        var request = new HttpRequestMessage(HttpMethod.Get, "/Me");
        request.Headers.Add("X-Desk-Live", "1");

        var page = await desk.Ask(request);

        Assert.Equal(HttpStatusCode.Unauthorized, page.Status);
        Assert.Equal("/Me", page.Path);
    }
}
