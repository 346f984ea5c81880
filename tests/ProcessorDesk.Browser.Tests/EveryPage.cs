using System.Globalization;
using Microsoft.AspNetCore.Mvc.RazorPages;
using Microsoft.AspNetCore.Routing;
using Microsoft.AspNetCore.Routing.Patterns;
using Microsoft.Extensions.DependencyInjection;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Door;
using ProcessorDesk.Web.Tests.Harness;

namespace ProcessorDesk.Browser.Tests;

/// <summary>The addresses of all pages, from the app's own routes, with ids from the demo's data in each state a page can show.</summary>
internal static class EveryPage
{
    /// <param name="states">How many states of one page are looked at, at the most.</param>
    public static IReadOnlyList<string> Of(ShopUnderTest shop, int states)
    {
        var addresses = new List<string>();
        foreach (var endpoint in shop.Services.GetRequiredService<EndpointDataSource>().Endpoints.OfType<RouteEndpoint>())
        {
            if (endpoint.Metadata.GetMetadata<PageActionDescriptor>() is not { } page)
                continue;
            var path = endpoint.RoutePattern.PathSegments;
            var fixedPart = "/" + string.Join('/', path.SelectMany(segment => segment.Parts).OfType<RoutePatternLiteralPart>().Select(part => part.Content));
            if (endpoint.RoutePattern.Parameters.All(parameter => parameter.IsOptional || parameter.Default is not null))
            {
                addresses.Add(fixedPart);
                addresses.AddRange(More(shop, page.ViewEnginePath).Take(states).Select(query => fixedPart + query));
                continue;
            }

            var ids = page.ViewEnginePath == "/Owner/Index" ? Links(shop) : Ids(shop, page.ViewEnginePath).ConvertAll(id => id.ToString(CultureInfo.InvariantCulture));
            if (ids.Count == 0)
                throw new InvalidOperationException($"The demo has nothing that {page.ViewEnginePath} could show.");
            addresses.AddRange(ids.Take(states).Select(id => $"{fixedPart}/{id}"));
        }

        return [.. addresses.Distinct().Where(address => address != "/" && !address.Contains("/Index", StringComparison.Ordinal)).Order(StringComparer.Ordinal)];
    }

    /// <summary>Pages that show another face with a query.</summary>
    private static string[] More(ShopUnderTest shop, string page) => page switch
    {
        "/Find/Index" => ["?q=a", "?q=nobody+of+that+name", "?q=" + Uri.EscapeDataString("A0C-7K3")],
        "/Counter/DropOff" => [$"?owner={shop.Read(records => records.Owners.Select(owner => owner.Id).First())}", $"?job={Jobs(shop, job => job.CuttingStartedAt == null).First()}"],
        "/Office/PriceList" => [.. shop.Read(records => records.PriceLists.Select(list => list.Id).ToList()).Select(id => $"/{id}")],
        _ => [],
    };

    private static List<int> Ids(ShopUnderTest shop, string page) => page switch
    {
        "/Find/Job" or "/Pickup/Job" or "/Counter/Order" => EachStage(shop),
        "/Grind/Split" => [.. Jobs(shop, job => job.CuttingDoneAt != null && job.HandedOverAt == null).Take(3)],
        "/Cutting/Sheet" => [.. EachStage(shop).Take(4)],
        "/Cutting/WeighIn" => [.. Jobs(shop, job => job.CuttingStartedAt != null && job.CuttingDoneAt == null).Take(1)],
        "/Cutting/Paper" or "/Counter/TakenIn" or "/Counter/Tickets" or "/Counter/Claim" or "/Pickup/Summary" => [.. EachStage(shop).Take(1)],
        "/Cutting/Strike" => shop.Read(records => records.WeighIns.Where(one => one.Strike == null && one.JobId != null).Select(one => one.Id).Take(1).ToList()),
        "/Cutting/Lug" => shop.Read(records => records.Fillings.Select(one => one.Id).Take(1).ToList()),
        "/Cooler/Hang" => shop.Read(records => records.Animals.Where(one => one.Shares.Any(share => share.Job.CuttingStartedAt == null)).Select(one => one.Id).Take(2).ToList()),
        "/Counter/Animal" => shop.Read(records => records.Animals.Where(one => one.Holds.Any(hold => hold.ReleasedAt == null)).Select(one => one.Id).Take(1)
            .Concat(records.Animals.Where(one => !one.Holds.Any()).Select(one => one.Id).Take(1)).ToList()),
        "/Counter/Shares" => shop.Read(records => records.Animals.Where(one => one.Shares.Count > 1).Select(one => one.Id).Take(1)
            .Concat(records.Animals.Where(one => one.Shares.Count == 1).Select(one => one.Id).Take(1)).ToList()),
        "/Counter/Owner" => shop.Read(records => records.Owners.Select(one => one.Id).Take(1).ToList()),
        "/Pickup/Invoice" => shop.Read(records => records.Invoices.Select(one => one.Id).Take(1).ToList()),
        "/Office/Product" or "/Office/Formula" => shop.Read(records => records.Products.OrderBy(one => one.Cured).Select(one => one.Id).Take(1)
            .Concat(records.Products.Where(one => one.Cured).Select(one => one.Id).Take(1)).ToList()),
        "/Office/Lug" => shop.Read(records => records.Lugs.Select(one => one.Id).Take(1).ToList()),
        "/Office/StaffEdit" => shop.Read(records => records.Staff.Select(one => one.Id).Take(1).ToList()),
        _ => throw new InvalidOperationException($"{page} asks for an id: say here which ones it is looked at with."),
    };

    /// <summary>Owners' links to the jobs of every stage.</summary>
    private static List<string> Links(ShopUnderTest shop)
    {
        var links = shop.Services.GetRequiredService<OwnerLinks>();
        return EachStage(shop).ConvertAll(id => shop.Read(records => records.Jobs.Single(job => job.Id == id))).ConvertAll(job => links.Of(job.Number, job.LinkGeneration));
    }

    /// <summary>A job of every stage there is in the demo.</summary>
    private static List<int> EachStage(ShopUnderTest shop) => shop.Read(records => records.Jobs
        .GroupBy(job => new
        {
            Started = job.CuttingStartedAt != null,
            Done = job.CuttingDoneAt != null,
            Agreed = records.AgreedSplits.Any(split => split.JobId == job.Id && split.WithdrawnAt == null),
            Invoiced = records.Invoices.Any(invoice => invoice.JobId == job.Id),
            Out = job.HandedOverAt != null,
        })
        .Select(jobs => jobs.Min(job => job.Id)).ToList());

    private static List<int> Jobs(ShopUnderTest shop, System.Linq.Expressions.Expression<Func<Job, bool>> which) =>
        shop.Read(records => records.Jobs.Where(which).OrderBy(job => job.Id).Select(job => job.Id).ToList());
}
