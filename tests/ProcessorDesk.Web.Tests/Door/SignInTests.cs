using System.Net;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Door;

public sealed class SignInTests(ShopUnderTest shop) : IClassFixture<ShopUnderTest>
{
    private readonly int _manager = shop.StaffOf(StaffRole.Manager);

    [Fact]
    public async Task A_page_asked_for_before_signing_in_comes_after_it()
    {
        var clerk = shop.AddStaff("Wilma Penn", StaffRole.Clerk);
        using var desk = shop.Stranger();

        var door = await desk.Open("/Me?from=tag");
        var page = await door.Send("Sign in", ("Input.StaffId", $"{clerk}"), ("Input.Station", "Pickup"), ("Input.Pin", Desk.Pin));

        Assert.Equal("/Me?from=tag", page.Path);
        page.Expect("Wilma Penn", "at Pickup");
    }

    [Theory]
    [InlineData("https://elsewhere.example/")]
    [InlineData("//elsewhere.example/")]
    [InlineData("/\\elsewhere.example")]
    public async Task An_address_of_another_site_is_not_followed_after_signing_in(string address)
    {
        using var desk = shop.Stranger();

        var door = await desk.Open("/Door?ReturnUrl=" + Uri.EscapeDataString(address));
        var page = await door.Send("Sign in", ("Input.StaffId", $"{_manager}"), ("Input.Station", "Office"), ("Input.Pin", Desk.Pin));

        Assert.Equal("/Today", page.Path);
    }

    [Fact]
    public async Task A_wrong_pin_is_told_beside_the_field_and_the_name_stays_chosen()
    {
        using var desk = shop.Stranger();

        var door = await desk.ComeIn(_manager, "Office", "0000");

        Assert.Equal(["That is not the PIN of Manager Tester. Type it again."], door.Problems);
        Assert.Equal($"{_manager}", door.Form("Sign in").Value("Input.StaffId"));
        Assert.Equal("", door.Form("Sign in").Value("Input.Pin"));
        Assert.Equal("true", door.Document.GetElementById("Input_Pin")!.GetAttribute("aria-invalid"));
    }

    [Fact]
    public async Task Five_wrong_pins_shut_the_name_for_a_minute_even_to_the_right_one()
    {
        var cutter = shop.AddStaff("Odo Field", StaffRole.Cutter);
        using var desk = shop.Stranger();

        for (var times = 0; times < 5; times++) await desk.ComeIn(cutter, "Cutting", "1111");
        var shut = await desk.ComeIn(cutter, "Cutting");
        shop.Clock.Advance(TimeSpan.FromSeconds(61));
        await desk.ComeIn(cutter, "Cutting");
        var page = await desk.Open("/Me");

        Assert.Equal(["Too many wrong tries. Wait 1 minute, then try again."], shut.Problems);
        page.Expect("Odo Field", "at Cutting");
    }

    [Fact]
    public async Task Who_is_signed_in_stays_so_for_weeks_and_goes_out_by_the_button()
    {
        using var desk = await shop.SignIn(StaffRole.Manager, "Office");

        shop.Clock.Advance(TimeSpan.FromDays(20));
        var weeksLater = await desk.Open("/Me");
        await weeksLater.Press("Sign out");
        var after = await desk.Open("/Me");

        weeksLater.Expect("Manager Tester", "at Office");
        Assert.Equal("Who is at the desk?", after.Heading);
    }

    [Fact]
    public async Task A_retired_hand_is_out_at_once()
    {
        var clerk = shop.AddStaff("Hedda Loam", StaffRole.Clerk);
        using var desk = shop.Stranger();
        await desk.ComeIn(clerk);

        shop.Write((records, act) =>
        {
            records.Staff.Single(s => s.Id == clerk).Retire(act.Now);
            return Outcome.Done();
        });
        var page = await desk.Open("/Me");

        Assert.Equal("Who is at the desk?", page.Heading);
        Assert.DoesNotContain("Hedda Loam", page.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_pin_is_changed_by_who_knows_the_old_one()
    {
        var clerk = shop.AddStaff("Inga Reed", StaffRole.Clerk);
        using var desk = shop.Stranger();
        await desk.ComeIn(clerk);

        var wrong = await (await desk.Open("/Me/Pin")).Send("Change it", ("Input.OldPin", "9999"), ("Input.NewPin", "7171"), ("Input.AgainPin", "7171"));
        var right = await wrong.Send("Change it", ("Input.OldPin", Desk.Pin), ("Input.NewPin", "7171"), ("Input.AgainPin", "7171"));
        await right.Press("Sign out");
        await desk.ComeIn(clerk, "Counter", "7171");

        Assert.Equal(["That is not your PIN. Type the one you sign in with."], wrong.Problems);
        right.Expect("Your PIN is changed.");
        (await desk.Open("/Me")).Expect("Inga Reed");
    }

    [Fact]
    public async Task A_screen_moves_to_another_station()
    {
        using var desk = await shop.SignIn(StaffRole.Manager, "Office");

        var moved = await (await desk.Open("/Me")).Send("Move here", ("Input.Station", "Cutting"));

        Assert.Equal(HttpStatusCode.OK, moved.Status);
        moved.Expect("This screen is now at Cutting.");
    }
}
