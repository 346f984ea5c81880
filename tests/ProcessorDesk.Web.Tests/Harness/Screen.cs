using System.Net;
using AngleSharp;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using Xunit;

namespace ProcessorDesk.Web.Tests.Harness;

/// <summary>A page as a person has it before them: what it says, and its forms to fill in and send.</summary>
public sealed class Screen
{
    private readonly Desk _desk;

    private Screen(Desk desk, HttpStatusCode status, string path, IHtmlDocument document, HttpResponseMessage answer) =>
        (_desk, Status, Path, Document, Headers) = (desk, status, path, document, answer.Headers.Concat(answer.Content.Headers).ToDictionary(h => h.Key, h => string.Join(", ", h.Value)));

    public HttpStatusCode Status { get; }

    /// <summary>Path and query the answer came from, after redirects.</summary>
    public string Path { get; }

    public IHtmlDocument Document { get; }

    public IReadOnlyDictionary<string, string> Headers { get; }

    /// <summary>What can be read in the page's main part, each run of blanks as one.</summary>
    public string Text => string.Join(' ', (Document.QuerySelector("main") ?? Document.Body!).TextContent.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    public string Heading => Document.QuerySelector("h1")?.TextContent.Trim() ?? "";

    /// <summary>What the page says is wrong, field by field, as its summary lists it.</summary>
    public IReadOnlyList<string> Problems => [.. Document.QuerySelectorAll("#problems li").Select(line => line.TextContent.Trim())];

    public static async Task<Screen> Read(Desk desk, HttpResponseMessage answer)
    {
        var context = BrowsingContext.New(Configuration.Default);
        var html = await answer.Content.ReadAsStringAsync();
        var address = answer.RequestMessage!.RequestUri!;
        var document = (IHtmlDocument)await context.OpenAsync(response => response.Content(html).Address(address));
        return new Screen(desk, answer.StatusCode, address.PathAndQuery, document, answer);
    }

    public Screen Expect(params string[] words)
    {
        foreach (var word in words) Assert.Contains(word, Text, StringComparison.Ordinal);
        return this;
    }

    /// <summary>The first form that has a button of these words.</summary>
    public IHtmlFormElement Form(string button) => Button(button).Form ?? throw new InvalidOperationException($"“{button}” is in no form.");

    public IHtmlButtonElement Button(string words) =>
        Document.QuerySelectorAll<IHtmlButtonElement>("button").FirstOrDefault(b => b.TextContent.Trim() == words || b.TextContent.Trim().StartsWith(words + " ", StringComparison.Ordinal))
        ?? throw new InvalidOperationException($"No button “{words}” on {Path} ({(int)Status}), which says: {Text}");

    /// <summary>Fills in the form that has this button, presses it, and follows to the next screen.</summary>
    public Task<Screen> Send(string button, params (string Name, string Value)[] typed)
    {
        foreach (var (name, value) in typed) Form(button).Fill(name, value);
        return Press(button);
    }

    /// <summary>Presses the button with the form as it stands; may be done again, as an impatient hand does.</summary>
    public Task<Screen> Press(string button) => _desk.Ask(Form(button).Submission(Button(button)));

    /// <summary>Sends one of several forms alike, by a button of it.</summary>
    public Task<Screen> Submit(IHtmlFormElement form, IHtmlButtonElement button) => _desk.Ask(form.Submission(button));

    /// <summary>Asks as the page's script does while one types: the form with this button, for a panel.</summary>
    public Task<Screen> Live(string button, string handler, params (string Name, string Value)[] typed)
    {
        foreach (var (name, value) in typed) Form(button).Fill(name, value);
        var request = Form(button).Submission(Button(button));
        request.RequestUri = new UriBuilder(request.RequestUri!) { Query = "handler=" + handler }.Uri;
        request.Headers.Add("X-Desk-Live", "1");
        return _desk.Ask(request);
    }

    public Task<Screen> Follow(string link) =>
        _desk.Open(Document.QuerySelectorAll<IHtmlAnchorElement>("a").First(a => a.TextContent.Trim() == link).Href);
}
