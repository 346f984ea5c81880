using System.Net;
using Microsoft.AspNetCore.Mvc.RazorPages;
using Microsoft.AspNetCore.Mvc.RazorPages.Infrastructure;
using Microsoft.AspNetCore.Routing;
using Microsoft.AspNetCore.Routing.Patterns;
using Microsoft.Extensions.DependencyInjection;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Door;

/// <summary>Every page and every handler of it, asked for by every role and by a stranger.</summary>
public sealed class RolesTests(ShopUnderTest shop) : IClassFixture<ShopUnderTest>
{
    private const string Anyone = "anyone";

    // C clerk, U cutter, K kitchen hand, M manager. Written out here on purpose, apart from the app's own table.
    private static readonly Dictionary<string, string> _open = new()
    {
        ["Today"] = "CUKM",
        ["Find"] = "CUKM",
        ["Me"] = "CUKM",
        ["Counter"] = "CM",
        ["Cooler"] = "CUM",
        ["Cutting"] = "UM",
        ["Grind"] = "CUKM",
        ["Kitchen"] = "KM",
        ["Trace"] = "KM",
        ["Freezer"] = "CUKM",
        ["Pickup"] = "CM",
        ["Office"] = "M",
        ["Door"] = Anyone,
        ["Trouble"] = Anyone,
        ["Owner"] = Anyone,
        ["Bench"] = Anyone,
    };

    [Theory]
    [InlineData(StaffRole.Clerk, 'C')]
    [InlineData(StaffRole.Cutter, 'U')]
    [InlineData(StaffRole.Kitchen, 'K')]
    [InlineData(StaffRole.Manager, 'M')]
    public async Task A_page_opens_to_its_roles_and_to_no_other(StaffRole role, char letter)
    {
        using var desk = await shop.SignIn(role);
        var wrong = new List<string>();

        foreach (var (folder, method, address) in await Handlers())
        {
            var status = (await desk.Ask(new HttpRequestMessage(method, address))).Status;
            var open = _open[folder] == Anyone || _open[folder].Contains(letter);
            if (open == (status == HttpStatusCode.Forbidden) || status == HttpStatusCode.InternalServerError)
                wrong.Add($"{method} {address}: {(int)status}, expected {(open ? "open" : "closed")}");
            if (address == "/Door/Leave" && method == HttpMethod.Post) await desk.ComeIn(shop.StaffOf(role));
        }

        Assert.Empty(wrong);
    }

    [Fact]
    public async Task A_stranger_is_led_to_the_door_from_every_page_that_is_not_open()
    {
        using var desk = shop.Stranger();
        var wrong = new List<string>();

        foreach (var (folder, method, address) in (await Handlers()).Where(h => _open[h.Folder] != Anyone))
        {
            var page = await desk.Ask(new HttpRequestMessage(method, address));
            if (page.Heading != "Who is at the desk?") wrong.Add($"{method} {address}: {page.Heading} ({folder})");
        }

        Assert.Empty(wrong);
    }

    [Fact]
    public async Task Every_folder_of_pages_is_listed()
    {
        var pages = await Pages();

        Assert.True(pages.Count >= 7, $"Only {pages.Count} pages were found.");
        Assert.DoesNotContain(pages, page => !_open.ContainsKey(Folder(page.Page)));
    }

    [Theory]
    [InlineData(StaffRole.Clerk, "Today,Counter,Cooler,Grind,Freezer,Pickup")]
    [InlineData(StaffRole.Cutter, "Today,Cooler,Cutting,Grind,Freezer")]
    [InlineData(StaffRole.Kitchen, "Today,Grind,Kitchen,Freezer")]
    [InlineData(StaffRole.Manager, "Today,Counter,Cooler,Cutting,Grind,Kitchen,Freezer,Pickup,Office")]
    public async Task The_stations_at_the_top_are_those_a_hand_may_open(StaffRole role, string stations)
    {
        using var desk = await shop.SignIn(role);

        var page = await desk.Open("/Me");

        Assert.Equal(stations, string.Join(',', page.Document.QuerySelectorAll("nav a").Select(link => link.TextContent)));
    }

    private async Task<List<(string Folder, HttpMethod Method, string Address)>> Handlers()
    {
        var found = new List<(string, HttpMethod, string)>();
        foreach (var (page, pattern) in await Pages())
        {
            var address = Address(pattern);
            found.Add((Folder(page), HttpMethod.Get, address));
            foreach (var handler in page.HandlerMethods)
            {
                var named = handler.Name is null ? address : $"{address}?handler={handler.Name}";
                found.Add((Folder(page), new HttpMethod(handler.HttpMethod.ToUpperInvariant()), named));
            }
        }
        return [.. found.Distinct()];
    }

    private async Task<List<(CompiledPageActionDescriptor Page, RoutePattern Pattern)>> Pages()
    {
        var loader = shop.Services.GetRequiredService<PageLoader>();
        var pages = new List<(CompiledPageActionDescriptor, RoutePattern)>();
        foreach (var endpoint in shop.Services.GetRequiredService<EndpointDataSource>().Endpoints.OfType<RouteEndpoint>())
        {
            if (endpoint.Metadata.GetMetadata<PageActionDescriptor>() is { } page)
                pages.Add((await loader.LoadAsync(page, endpoint.Metadata), endpoint.RoutePattern));
        }
        return pages;
    }

    private static string Folder(CompiledPageActionDescriptor page) => page.ViewEnginePath.Split('/')[1];

    /// <summary>An address of the page; where it names a thing, one that does not exist.</summary>
    private static string Address(RoutePattern pattern) =>
        "/" + string.Join('/', pattern.PathSegments.Select(segment => string.Concat(segment.Parts.Select(part =>
            part is RoutePatternLiteralPart literal ? literal.Content : "987654321"))));
}
