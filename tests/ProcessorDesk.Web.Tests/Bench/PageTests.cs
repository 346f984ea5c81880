using System.Net;
using AngleSharp.Html.Dom;
using ProcessorDesk.Web.Bench;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Bench;

/// <summary>The bench as a person sees it: without signing in, without script.</summary>
public sealed class PageTests(ShopUnderTest shop) : IClassFixture<ShopUnderTest>
{
    [Fact]
    public async Task Every_calculator_is_listed_opens_empty_and_answers_its_example()
    {
        using var desk = new Desk(shop.Address, follows: false);
        var list = await desk.Open(BenchList.Root);

        foreach (var calculator in BenchList.All)
        {
            Assert.NotNull(list.Document.QuerySelector($"main a[href='{calculator.Address}']"));
            var empty = await desk.Open(calculator.Address);
            var answered = await desk.Open($"{calculator.Address}?{calculator.Example}");

            Assert.Equal((HttpStatusCode.OK, calculator.Title), (empty.Status, empty.Heading));
            Assert.Empty(empty.Problems);
            Assert.Null(empty.Document.QuerySelector("#answer"));
            Assert.Equal(HttpStatusCode.OK, answered.Status);
            Assert.NotEmpty(answered.Document.QuerySelectorAll("#answer .working-steps li"));
        }
    }

    [Fact]
    public async Task Every_answer_names_exactly_the_figures_listed()
    {
        foreach (var calculator in BenchList.All)
        {
            var (status, _, json) = await shop.Ask($"{calculator.Path}?{calculator.Example}");

            Assert.Equal(HttpStatusCode.OK, status);
            Assert.Equal(calculator.Figures.Select(figure => figure.Name), json.EnumerateObject().Select(figure => figure.Name));
        }
    }

    [Fact]
    public async Task A_form_leads_to_an_address_that_holds_the_answer()
    {
        using var desk = shop.Stranger();
        var form = await desk.Open("/bench/yield");

        var answer = await form.Send("Work it out", ("species", "deer"), ("from", "fieldDressed"), ("to", "boneless"), ("weightLb", "100"));

        Assert.Equal("/bench/yield?species=deer&from=fieldDressed&to=boneless&weightLb=100", answer.Path.Split('#')[0]);
        answer.Expect("100 lb × 0.48 = 48 lb", "usually 48 lb × 0.95 = 45.6 lb", "Michigan State University Extension", "Local rules");
        Assert.Equal("100", Input(answer, "#f-weightLb"));
    }

    [Fact]
    public async Task What_is_wrong_stands_beside_its_field_and_what_was_typed_stays()
    {
        using var desk = shop.Stranger();

        var page = await desk.Open("/bench/split?leanLb=forty&divisionLb=0.01&ask=" + Uri.EscapeDataString("a;lean;1;70;0;0;0;0\r\nb;half;1;70;0;0;0;0"));

        Assert.Equal(HttpStatusCode.BadRequest, page.Status);
        Assert.Equal(2, page.Problems.Count);
        Assert.Equal("forty", Input(page, "#f-leanLb"));
        Assert.Equal("a;lean;1;70;0;0;0;0\nb;half;1;70;0;0;0;0", ((IHtmlTextAreaElement)page.Document.QuerySelector("#f-ask")!).Value);
        Assert.Contains("plain decimal", page.Document.QuerySelector("#f-leanLb-problem")!.TextContent, StringComparison.Ordinal);
        Assert.StartsWith("Entry 2:", page.Document.QuerySelector("#f-ask-problem")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("f-ask-problem", page.Document.QuerySelector("#f-ask")!.GetAttribute("aria-describedby"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_page_without_an_answer_says_so_beside_the_field()
    {
        using var desk = shop.Stranger();

        var page = await desk.Open("/bench/girth?girthIn=12&age=adult");

        Assert.Equal(HttpStatusCode.UnprocessableEntity, page.Status);
        Assert.Contains("20 to 50 in", Assert.Single(page.Problems), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("*/*", "text/html")]
    [InlineData("text/html,application/xhtml+xml,application/xml;q=0.9,*/*;q=0.8", "text/html")]
    [InlineData("application/xml", "text/html")]
    [InlineData("not a media type at all", "text/html")]
    [InlineData("application/json", "application/json")]
    [InlineData("application/json, text/plain, */*", "application/json")]
    [InlineData("text/html;q=0.5, application/json", "application/json")]
    [InlineData("text/html, application/json;q=0.5", "text/html")]
    public async Task Accept_says_which_of_the_two_is_sent(string accept, string expected)
    {
        using var desk = new Desk(shop.Address, follows: false);
        using var request = new HttpRequestMessage(HttpMethod.Get, "/bench/girth/?girthIn=36&age=adult");
        request.Headers.TryAddWithoutValidation("Accept", accept);

        using var answer = await desk.Client.SendAsync(request);

        Assert.Equal((HttpStatusCode.OK, expected), (answer.StatusCode, answer.Content.Headers.ContentType!.MediaType));
        Assert.Equal("Accept", string.Join(',', answer.Headers.Vary));
        Assert.False(answer.Headers.Contains("Set-Cookie"));
        Assert.Contains("default-src 'none'", string.Join(' ', answer.Headers.GetValues("Content-Security-Policy")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Nothing_can_be_sent_to_it()
    {
        using var desk = shop.Stranger();
        using var nothing = new FormUrlEncodedContent([]);

        using var answer = await desk.Client.PostAsync(new Uri("/bench/girth?girthIn=36&age=adult", UriKind.Relative), nothing);

        Assert.Equal(HttpStatusCode.MethodNotAllowed, answer.StatusCode);
    }

    [Fact]
    public async Task The_door_and_the_desk_lead_to_it()
    {
        using var stranger = shop.Stranger();
        using var desk = await shop.SignIn(Records.StaffRole.Cutter);

        Assert.NotNull((await stranger.Open("/Door")).Document.QuerySelector("a[href='/bench']"));
        Assert.NotNull((await desk.Open("/Today")).Document.QuerySelector("a[href='/bench']"));
    }

    private static string Input(Screen page, string which) => ((IHtmlInputElement)page.Document.QuerySelector(which)!).Value;
}
