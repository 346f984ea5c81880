using Microsoft.Playwright;
using ProcessorDesk.Browser.Tests.Screens;
using ProcessorDesk.Records;
using ProcessorDesk.Trade.Tickets;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace ProcessorDesk.Browser.Tests;

/// <summary>What only a browser can show: pressing twice, going back, losing the sign-in, the keys.</summary>
[Collection(InChromium.Name)]
public sealed class FormsTests(Chromium chromium, StoryShop shop) : IClassFixture<StoryShop>
{
    private int Jobs => shop.Read(records => records.Jobs.Count());

    [Fact]
    public async Task A_double_click_a_reload_and_the_back_button_make_no_second_job()
    {
        var page = await AtTheCounter();
        var form = await Filled(page, "Twice Pressed", "TW-41");
        var before = Jobs;

        await form.Button("Take it in").DblClickAsync();
        await TakenInScreen.On(page);
        await page.ReloadAsync();
        await TakenInScreen.On(page);
        Assert.Equal(before + 1, Jobs);

        // Back shows the form without what was typed, which is kept from the next customer's eyes; sending it takes nothing in.
        await page.GoBackAsync();
        await form.Press("Take it in");
        await Expect(page.Locator("#problems")).ToBeVisibleAsync();

        Assert.Equal(before + 1, Jobs);
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task A_wrong_form_keeps_all_that_was_typed_and_leads_to_the_field()
    {
        var page = await AtTheCounter();
        var form = await Filled(page, "Half Done", "TW-42");
        await form.Type("Input.Animals[0].Weight", "heavy");
        await form.Type("Input.Order.Notes", "Two lines\nof notes");
        var typed = await Typed(page);

        await form.Press("Take it in");

        await Expect(page.Locator("#problems")).ToBeFocusedAsync();
        Assert.Equal(typed, await Typed(page));
        await page.Locator("#problems a").First.ClickAsync();
        await Expect(page.Locator("[name='Input.Animals[0].Weight']")).ToBeFocusedAsync();
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task A_form_sent_signed_out_is_kept_and_saved_after_sign_in()
    {
        var page = await AtTheCounter();
        var form = await Filled(page, "Signed Out", "TW-43");
        var before = Jobs;
        await page.Context.ClearCookiesAsync(new BrowserContextClearCookiesOptions { Name = "desk" });

        await form.Press("Take it in");
        await form.Says("What you typed is kept");
        await form.Choose("Input.StaffId", $"{shop.Clerk}");
        await form.Type("Input.Pin", Desk.Pin);
        await form.Press("Sign in");
        await form.Says("Your form is still here", "Signed Out", "TW-43", "128.5");
        Assert.Equal(before, Jobs);
        await form.Press("Send it again");

        await TakenInScreen.On(page);
        Assert.Equal(before + 1, Jobs);
        await form.Says("Signed Out", "TW-43", "128.5 lb");
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task A_slash_goes_to_the_find_box_and_enter_finds()
    {
        var page = await AtTheCounter();
        await page.GotoAsync("/Today");

        await page.Keyboard.PressAsync("/");

        await Expect(page.Locator("#find")).ToBeFocusedAsync();
        await page.Keyboard.TypeAsync("nobody of that name");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator("h1")).ToHaveTextAsync("Nothing found for “nobody of that name”");
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Enter_in_a_field_sends_the_main_action_whatever_buttons_stand_before_it()
    {
        var page = await AtTheCounter();
        var form = await Filled(page, "Enter Pressed", "TW-44");
        var before = Jobs;

        await form.Field("Input.Animals[0].Tag").PressAsync("Enter");

        await TakenInScreen.On(page);
        Assert.Equal(before + 1, Jobs);
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task A_ticket_typed_with_one_wrong_character_is_refused_in_words()
    {
        var page = await AtTheCounter();
        var taken = await (await Filled(page, "Wrong Ticket", "TW-45")).TakeIn();
        var code = await taken.Claim();
        // Another last character cannot hold the check value any more.
        var wrong = code[..^1] + (code[^1] == '2' ? '3' : '2');
        Assert.False(TicketCode.Parse(wrong).Try(out _, out _));

        await page.FillAsync("#find", wrong);
        await page.PressAsync("#find", "Enter");
        await Expect(page.Locator("main .warn")).ToContainTextAsync("Ticket");
        Assert.DoesNotContain("Wrong Ticket", await taken.Words(), StringComparison.Ordinal);

        await page.FillAsync("#find", code);
        await page.PressAsync("#find", "Enter");
        await Expect(page.Locator("h1")).ToContainTextAsync("Wrong Ticket");
        await page.Context.CloseAsync();
    }

    private async Task<IPage> AtTheCounter()
    {
        var page = await chromium.Window(shop.Address);
        await (await DoorScreen.Open(page)).ComeIn(shop.Clerk, "Counter");
        return page;
    }

    private static async Task<DropOffScreen> Filled(IPage page, string owner, string tag)
    {
        var form = await DropOffScreen.Open(page);
        await form.Owner(owner, "(555) 555-0171");
        await form.Deer(0, tag, "128.5");
        await form.Ask(0, "Ring sausage", "OwnLean", "25");
        return form;
    }

    /// <summary>Everything a hand can change on the page, as it stands; the browser writes the line breaks of a text its own way.</summary>
    private static async Task<string[]> Typed(IPage page) => await page.EvaluateAsync<string[]>(
        "() => [...document.querySelectorAll('main input:not([type=hidden]), main select, main textarea')]"
        + ".map(e => `${e.name}=${e.type === 'radio' || e.type === 'checkbox' ? `${e.value} ${e.checked}` : e.value}`)");
}
