using Microsoft.AspNetCore.Mvc.RazorPages;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;
using ProcessorDesk.Browser.Tests;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Tests.Harness;

namespace ProcessorDesk.Seasons.Tests.Looking;

/// <summary>Every page of the app opened by every role that may; in each of its states by the manager, who sees most on it.</summary>
internal static class PageWalk
{
    private const int States = 7;

    public static async Task<IReadOnlyList<PageLoad>> Of(SeasonUnderTest shop)
    {
        var loads = new List<PageLoad>();
        foreach (var role in Enum.GetValues<StaffRole>())
        {
            using var desk = await shop.ComeIn(role);
            shop.Loads.Take();
            foreach (var address in Addresses(shop, role == StaffRole.Manager ? States : 1))
                await desk.Client.GetAsync(address);
            loads.AddRange(shop.Loads.Take());
        }

        return loads;
    }

    /// <summary>The names of all pages but those that are no place to stand: leaving, and the page of trouble.</summary>
    public static IEnumerable<string> Pages(ShopUnderTest shop) =>
        shop.Services.GetRequiredService<EndpointDataSource>().Endpoints
            .Select(endpoint => endpoint.Metadata.GetMetadata<PageActionDescriptor>()?.ViewEnginePath)
            .OfType<string>()
            .Where(page => page is not ("/Door/Leave" or "/Trouble/Index"))
            .Distinct();

    /// <param name="states">How many states of one page, at the most.</param>
    public static IReadOnlyList<string> Addresses(ShopUnderTest shop, int states = States) =>
        // Leaving is a press, not a page; opening its address would end the walk.
        [.. EveryPage.Of(shop, states).Where(address => address != "/Door/Leave")];
}
