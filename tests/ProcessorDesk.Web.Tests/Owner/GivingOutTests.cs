using System.Net;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.OwnersPage;

/// <summary>Where the shop's own people find an owner's link, and when there is none.</summary>
public sealed class GivingOutTests(ShopUnderTest shop) : IClassFixture<ShopUnderTest>
{
    private const string Public = "https://desk.example.com";

    [Fact]
    public async Task No_link_is_shown_or_printed_before_the_public_address_led_here()
    {
        var deer = new OwnersDeer(shop);
        using var desk = await shop.SignIn(StaffRole.Clerk);
        SetAddress(null, tried: false);
        (await desk.Open($"/Counter/OwnersPage/{deer.Id}")).Expect("Owners can't reach this desk from home.");

        SetAddress(Public, tried: false);

        (await desk.Open($"/Counter/OwnersPage/{deer.Id}")).Expect("The public address https://desk.example.com was not tried yet");
        var hub = await desk.Open($"/Find/Job/{deer.Id}");
        hub.Expect("No link is given out yet");
        Assert.Null(hub.Document.QuerySelector("a[href*='/Counter/OwnersPage']"));
        Assert.Equal(HttpStatusCode.OK, (await hub.Follow("See what the owner sees")).Status);
        Assert.DoesNotContain("desk.example.com", await PdfText.Of(desk, $"/Counter/Claim/{deer.Id}"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Once_it_did_the_link_stands_on_its_page_with_a_code_and_on_the_claim_ticket()
    {
        var deer = new OwnersDeer(shop);
        SetAddress(Public, tried: true);
        using var desk = await shop.SignIn(StaffRole.Clerk);

        var page = await (await desk.Open($"/Find/Job/{deer.Id}")).Follow("Link to give out");

        page.Expect($"Owner's page of {OwnersDeer.Name}", Public + deer.Link);
        Assert.NotNull(page.Document.QuerySelector("svg.code title"));
        Assert.Contains(deer.Link, string.Concat((await PdfText.Of(desk, $"/Counter/Claim/{deer.Id}")).Where(sign => !char.IsWhiteSpace(sign))), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_clerk_makes_a_new_link_and_the_old_one_leads_nowhere()
    {
        var deer = new OwnersDeer(shop);
        SetAddress(Public, tried: true);
        using var desk = await shop.SignIn(StaffRole.Clerk);
        using var home = shop.Stranger();
        var old = deer.Link;
        Assert.Equal(HttpStatusCode.OK, (await home.Open(old)).Status);

        var page = await (await desk.Open($"/Counter/OwnersPage/{deer.Id}")).Press("Make a new link");

        page.Expect("This is a new link.", Public + deer.Link);
        Assert.NotEqual(old, deer.Link);
        Assert.Equal(HttpStatusCode.NotFound, (await home.Open(old)).Status);
        Assert.Equal(HttpStatusCode.OK, (await home.Open(deer.Link)).Status);
        using var kitchen = await shop.SignIn(StaffRole.Kitchen, "Grind");
        Assert.Equal(HttpStatusCode.Forbidden, (await kitchen.Open($"/Counter/OwnersPage/{deer.Id}")).Status);
    }

    [Fact]
    public async Task The_owners_code_scanned_in_the_shop_leads_to_the_job()
    {
        var deer = new OwnersDeer(shop);
        using var desk = await shop.SignIn(StaffRole.Clerk);

        var page = await desk.Open("/Find?q=" + Uri.EscapeDataString((Public + deer.Link).ToUpperInvariant()));

        Assert.Equal($"/Find/Job/{deer.Id}", page.Path);
    }

    private void SetAddress(string? address, bool tried) => shop.Write((records, act) =>
    {
        var settings = records.Shop.Single();
        settings.SetPublicAddress("http://shop-pc");
        settings.SetPublicAddress(address);
        if (tried)
            settings.PublicAddressLedHere(act.Now);
        return Outcome.Done();
    });
}
