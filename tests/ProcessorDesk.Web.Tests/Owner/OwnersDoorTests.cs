using System.Net;
using Microsoft.Data.Sqlite;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Door;
using ProcessorDesk.Web.Tests.Harness;
using ProcessorDesk.Web.Tests.Hosting;
using Xunit;

namespace ProcessorDesk.Web.Tests.OwnersPage;

/// <summary>Who gets in by a link, and who does not.</summary>
public sealed class OwnersDoorTests : IClassFixture<ShopUnderTest>
{
    private readonly ShopUnderTest _shop;

    public OwnersDoorTests(ShopUnderTest shop)
    {
        _shop = shop;
        // Each test tries its wrong links in a minute of its own.
        shop.Clock.Advance(TimeSpan.FromMinutes(2));
    }

    [Fact]
    public async Task Whoever_has_the_link_needs_no_sign_in_and_gets_no_cookie_and_no_script()
    {
        var deer = new OwnersDeer(_shop);
        using var home = _shop.Stranger();

        var page = await home.Open(deer.Link.ToUpperInvariant());

        Assert.Equal(HttpStatusCode.OK, page.Status);
        Assert.False(page.Headers.ContainsKey("Set-Cookie"));
        Assert.Empty(page.Document.QuerySelectorAll("script, form, [style], nav, a:not([href^='tel:'])"));
        Assert.Equal("no-referrer", page.Headers["Referrer-Policy"]);
        Assert.Contains("noindex", page.Headers["X-Robots-Tag"], StringComparison.Ordinal);
        Assert.Equal("no-store", page.Headers["Cache-Control"]);
        Assert.StartsWith("default-src 'none'", page.Headers["Content-Security-Policy"], StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_page_is_only_looked_at()
    {
        var deer = new OwnersDeer(_shop);
        using var home = _shop.Stranger();

        foreach (var method in new[] { HttpMethod.Post, HttpMethod.Put, HttpMethod.Delete, HttpMethod.Patch })
            Assert.Equal(HttpStatusCode.MethodNotAllowed, (await home.Ask(new HttpRequestMessage(method, deer.Link))).Status);
        Assert.Equal(HttpStatusCode.OK, (await home.Ask(new HttpRequestMessage(HttpMethod.Head, deer.Link))).Status);
    }

    [Fact]
    public async Task A_wrong_link_gets_the_same_answer_whatever_is_wrong_with_it()
    {
        var deer = new OwnersDeer(_shop);
        var good = deer.Link;
        deer.Renew();
        using var home = _shop.Stranger();
        var proof = deer.Link.Split('-')[1];
        string[] wrong = [good, deer.Link[..^1] + (deer.Link[^1] == 'A' ? 'B' : 'A'), $"/Owner/987654-{proof}", "/Owner/0-" + proof, "/Owner/" + proof, "/Owner/nonsense"];

        var answers = new List<string>();
        foreach (var link in wrong)
        {
            var page = await home.Open(link);
            Assert.Equal(HttpStatusCode.NotFound, page.Status);
            Assert.Equal(link, page.Path);
            answers.Add(page.Document.DocumentElement.OuterHtml);
        }

        Assert.Single(answers.Distinct());
        Assert.Contains("call the shop", answers[0], StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.OK, (await home.Open(deer.Link)).Status);
    }

    [Fact]
    public async Task Who_tries_many_wrong_links_waits_for_the_next_minute()
    {
        var deer = new OwnersDeer(_shop);
        using var home = _shop.Stranger();
        for (var i = 0; i < WrongLinks.Most; i++)
            Assert.Equal(HttpStatusCode.NotFound, (await home.Open($"/Owner/{i}-AAAAAAAAAAAAAAAA")).Status);

        Assert.Equal(HttpStatusCode.TooManyRequests, (await home.Open(deer.Link)).Status);

        _shop.Clock.Advance(TimeSpan.FromMinutes(1));
        Assert.Equal(HttpStatusCode.OK, (await home.Open(deer.Link)).Status);
    }

    [Fact]
    public async Task A_copy_of_the_database_alone_opens_no_link()
    {
        var deer = new OwnersDeer(_shop);
        var copy = Directory.CreateTempSubdirectory("processor-desk-copy-").FullName;
        try
        {
            CopyDatabase(copy);

            Assert.Equal(HttpStatusCode.NotFound, await StatusIn(copy, deer.Link));

            // With the shop's own key beside it, it is the shop.
            File.Copy(Path.Combine(_shop.Folder, "keys", "owner-links.key"), Path.Combine(copy, "keys", "owner-links.key"), overwrite: true);
            Assert.Equal(HttpStatusCode.OK, await StatusIn(copy, deer.Link));
        }
        finally
        {
            Directory.Delete(copy, recursive: true);
        }
    }

    private void CopyDatabase(string folder)
    {
        using var connection = new SqliteConnection(RecordsFile.ConnectionString(Path.Combine(_shop.Folder, RecordsFile.Name)));
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = "VACUUM INTO $copy";
        command.Parameters.AddWithValue("$copy", Path.Combine(folder, RecordsFile.Name));
        command.ExecuteNonQuery();
    }

    private static async Task<HttpStatusCode> StatusIn(string folder, string link)
    {
        using var desk = new RunningDesk("--data", folder, "--urls", "http://127.0.0.1:0");
        var port = (await desk.Says(@"Open on this PC: +http://localhost:(\d+)$")).Groups[1].Value;
        using var client = new HttpClient { BaseAddress = new Uri($"http://127.0.0.1:{port}") };
        using var answer = await client.GetAsync(new Uri(link, UriKind.Relative));
        return answer.StatusCode;
    }
}
