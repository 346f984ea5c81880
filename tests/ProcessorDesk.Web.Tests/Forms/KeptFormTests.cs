using System.Net;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Forms;

/// <summary>Nothing typed is lost: not by a sign-out, not by a form token that no longer holds.</summary>
public sealed class KeptFormTests(ShopUnderTest shop) : IClassFixture<ShopUnderTest>
{
    private readonly int _manager = shop.StaffOf(StaffRole.Manager);

    [Fact]
    public async Task A_form_sent_after_a_sign_out_comes_back_and_is_saved_by_one_press()
    {
        using var desk = await shop.SignIn(StaffRole.Manager, "Counter");
        var open = await desk.Open("/Me");
        desk.ForgetSignIn();

        var door = await open.Send("Move here", ("Input.Station", "Pickup"));
        var again = await SignIn(door, Desk.Pin);
        var saved = await again.Press("Send it again");

        Assert.Equal(HttpStatusCode.Unauthorized, door.Status);
        door.Expect("What you typed is kept");
        Assert.Equal("You are signed in again. Your form is still here.", again.Heading);
        again.Expect("Station Pickup");
        saved.Expect("This screen is now at Pickup.");
    }

    [Fact]
    public async Task A_wrong_pin_on_the_way_does_not_lose_it()
    {
        using var desk = await shop.SignIn(StaffRole.Manager, "Counter");
        var open = await desk.Open("/Me");
        desk.ForgetSignIn();

        var door = await open.Send("Move here", ("Input.Station", "Grind"));
        var refused = await SignIn(door, "0001");
        var again = await SignIn(refused, Desk.Pin);
        var saved = await again.Press("Send it again");

        Assert.Single(refused.Problems);
        saved.Expect("This screen is now at Grind.");
    }

    [Fact]
    public async Task A_door_left_open_too_long_does_not_lose_it_either()
    {
        using var desk = await shop.SignIn(StaffRole.Manager, "Counter");
        var open = await desk.Open("/Me");
        desk.ForgetSignIn();

        var door = await open.Send("Move here", ("Input.Station", "Cooler"));
        desk.Drop("desk-form");
        var stale = await SignIn(door, Desk.Pin);
        var again = await SignIn(stale, Desk.Pin);
        var saved = await again.Press("Send it again");

        Assert.Equal(HttpStatusCode.BadRequest, stale.Status);
        saved.Expect("This screen is now at Cooler.");
    }

    [Fact]
    public async Task A_form_whose_token_no_longer_holds_is_shown_to_be_sent_once_more()
    {
        using var desk = await shop.SignIn(StaffRole.Manager, "Counter");
        var open = await desk.Open("/Me");
        desk.Drop("desk-form");

        var again = await open.Send("Move here", ("Input.Station", "Pickup"));
        var saved = await again.Press("Send it again");

        Assert.Equal(HttpStatusCode.BadRequest, again.Status);
        Assert.Equal("This page had been open too long. Your form is still here.", again.Heading);
        again.Expect("Station Pickup");
        saved.Expect("This screen is now at Pickup.");
    }

    [Fact]
    public async Task A_form_opened_by_one_hand_and_sent_by_another_is_shown_first()
    {
        using var desk = await shop.SignIn(StaffRole.Manager, "Counter");
        var open = await desk.Open("/Me");
        await desk.ComeIn(shop.StaffOf(StaffRole.Clerk));

        var again = await open.Send("Move here", ("Input.Station", "Cutting"));

        Assert.Equal("This page had been open too long. Your form is still here.", again.Heading);
    }

    [Fact]
    public async Task A_pin_is_never_kept()
    {
        using var desk = await shop.SignIn(StaffRole.Manager, "Counter");
        var open = await desk.Open("/Me/Pin");
        desk.Drop("desk-form");

        var again = await open.Send("Change it", ("Input.OldPin", "2580"), ("Input.NewPin", "86421"), ("Input.AgainPin", "86421"));

        Assert.Equal(HttpStatusCode.BadRequest, again.Status);
        Assert.DoesNotContain("86421", again.Document.DocumentElement.OuterHtml, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_sealed_form_that_the_shop_did_not_write_is_not_opened()
    {
        using var desk = shop.Stranger();
        var door = await desk.Open("/Door");
        var kept = door.Document.CreateElement("input");
        kept.SetAttribute("type", "hidden");
        kept.SetAttribute("name", "Kept");
        kept.SetAttribute("value", "CfDJ8Nonsense");
        door.Form("Sign in").AppendChild(kept);

        var page = await SignIn(door, Desk.Pin);

        Assert.Equal("/Today", page.Path);
    }

    private Task<Screen> SignIn(Screen door, string pin) =>
        door.Send("Sign in", ("Input.StaffId", $"{_manager}"), ("Input.Station", "Counter"), ("Input.Pin", pin));
}
