using System.Globalization;
using Microsoft.AspNetCore.Mvc.RazorPages;
using Microsoft.AspNetCore.Routing;
using Microsoft.AspNetCore.Routing.Patterns;
using Microsoft.Extensions.DependencyInjection;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Bench;
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

            if (page.ViewEnginePath == "/Bench/Calculator")
            {
                addresses.AddRange(BenchAddresses(states));
                continue;
            }

            var ids = page.ViewEnginePath == "/Owner/Index" ? Links(shop)
                : page.ViewEnginePath.StartsWith("/Trace/", StringComparison.Ordinal) ? Traces.Of(shop, page.ViewEnginePath)
                : Ids(shop, page.ViewEnginePath).ConvertAll(id => id.ToString(CultureInfo.InvariantCulture));
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
        "/Trace/Index" => ["?q=1", "?q=nothing+like+it", "?q=" + Uri.EscapeDataString("A0C-7K3")],
        "/Counter/DropOff" => [$"?owner={shop.Read(records => records.Owners.Select(owner => owner.Id).First())}", $"?job={Jobs(shop, job => job.CuttingStartedAt == null).First()}"],
        "/Office/Ingredient" => [.. shop.Read(records => records.Ingredients.OrderBy(one => one.Id).Select(one => one.Id).Take(3).ToList()).Select(id => $"/{id}")],
        "/Kitchen/Receive" => [$"?ingredient={shop.Read(records => records.Ingredients.Min(one => one.Id))}"],
        "/Office/PriceList" => [.. shop.Read(records => records.PriceLists.Select(list => list.Id).ToList()).Select(id => $"/{id}")],
        _ => [],
    };

    private static List<int> Ids(ShopUnderTest shop, string page) => page switch
    {
        "/Pickup/Job" => [.. Boxing(shop).Concat(EachStage(shop)).Distinct()],
        "/Find/Job" or "/Counter/Order" => EachStage(shop),
        "/Grind/Split" => [.. Jobs(shop, job => job.CuttingDoneAt != null && job.HandedOverAt == null).Take(3)],
        "/Cutting/Sheet" => [.. EachStage(shop).Take(4)],
        "/Cutting/WeighIn" => [.. Jobs(shop, job => job.CuttingStartedAt != null && job.CuttingDoneAt == null).Take(1)],
        "/Freezer/Job" => Boxing(shop),
        "/Freezer/Label" => shop.Read(records => records.Boxes.Where(one => one.UnpackedAt == null).OrderBy(one => one.Id).Select(one => one.Id).Take(1).ToList()),
        "/Pickup/HandOver" or "/Pickup/Summary" => HandOvers(shop),
        "/Cutting/Paper" or "/Counter/TakenIn" or "/Counter/Tickets" or "/Counter/Claim" or "/Counter/OwnersPage" => [.. EachStage(shop).Take(1)],
        "/Cutting/Strike" or "/Cutting/Move" => shop.Read(records => records.WeighIns.Where(one => one.Strike == null && one.JobId != null).Select(one => one.Id).Take(1).ToList()),
        "/Office/ProcessProduct" => shop.Read(records => records.Products.Where(one => one.RetiredAt == null).OrderBy(one => one.Id).Select(one => one.Id).Take(1).ToList()),
        "/Cutting/Lug" => shop.Read(records => records.Fillings.Select(one => one.Id).Take(1).ToList()),
        "/Kitchen/Batch" or "/Kitchen/Weigh" or "/Kitchen/Readings" or "/Kitchen/Ending" => EachBatch(shop),
        "/Kitchen/Record" => shop.Read(records => records.Batches.Where(batch => batch.MixedAt != null).OrderByDescending(batch => batch.Id).Select(batch => batch.Id).Take(1).ToList()),
        "/Kitchen/Sheet" or "/Kitchen/Ticket" => [.. EachBatch(shop).Take(1)],
        "/Kitchen/Load" => EachLoad(shop),
        "/Kitchen/MixedLots" => shop.Read(records => records.Loads.Where(load => load.MixedAt != null && load.Batch.ReleasedAt == null).Select(load => load.Id).Take(1)
            .Concat(records.Loads.Where(load => load.MixedAt != null && load.Batch.ReleasedAt != null).Select(load => load.Id).Take(1)).ToList()),
        "/Kitchen/Lot" => shop.Read(records => records.IngredientLots.Where(lot => lot.UsedUpAt != null).Select(lot => lot.Id).Take(1)
            .Concat(records.IngredientLots.Where(lot => lot.UsedUpAt == null).Select(lot => lot.Id).Take(1)).ToList()),
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

    /// <summary>Whether an address is one of the bench with something wrong in it, which its status says too.</summary>
    public static bool IsRefused(string address) => address.EndsWith(Wrong, StringComparison.Ordinal);

    private const string Wrong = "=not-that";

    /// <summary>Every calculator with an answer and one with something wrong; where more states are looked at, all of both, and empty.</summary>
    private static IEnumerable<string> BenchAddresses(int states)
    {
        var answered = BenchList.All.Select(calculator => $"{calculator.Address}?{calculator.Example}");
        var wrong = BenchList.All.Select(calculator => $"{calculator.Address}?{calculator.Fields[0].Name}{Wrong}");
        return states == 1 ? answered.Concat(wrong.Take(1)) : answered.Concat(wrong).Concat(BenchList.All.Select(calculator => calculator.Address));
    }

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

    /// <summary>A batch of every state there is: planned, mixed, heated, weighed, released, over, held and not, pooled and own.</summary>
    private static List<int> EachBatch(ShopUnderTest shop) => shop.Read(records => records.Batches
        .GroupBy(batch => new
        {
            IsMixed = batch.MixedAt != null,
            IsReleased = batch.ReleasedAt != null,
            IsOver = batch.EndedAt != null,
            IsHeld = records.Holds.Any(hold => hold.BatchId == batch.Id && hold.ReleasedAt == null),
            IsHot = records.BatchSteps.Any(step => step.BatchId == batch.Id && step.Kind == BatchStepKind.HeatStarted && step.UndoneAt == null),
            IsWeighed = records.WeighIns.Any(weighIn => weighIn.BatchId == batch.Id),
        })
        .OrderBy(batches => batches.Key.IsReleased).ThenByDescending(batches => batches.Key.IsHeld)
        .Select(batches => batches.Max(batch => batch.Id)).ToList());

    /// <summary>A load to be drawn, one with meat in it, one that is mixed.</summary>
    private static List<int> EachLoad(ShopUnderTest shop) => shop.Read(records => records.Loads
        .Where(load => load.Batch.ReleasedAt == null)
        .GroupBy(load => new { IsMixed = load.MixedAt != null, IsCured = load.Batch.Product.Cured, HasMeat = load.Draws.Any(draw => draw.StruckAt == null) })
        .OrderByDescending(loads => loads.Key.IsCured)
        .Select(loads => loads.Max(load => load.Id)).ToList());

    /// <summary>A job all in boxes, one made and to be boxed, one with boxes and something in the kitchen, one with nothing made, one that left.</summary>
    private static List<int> Boxing(ShopUnderTest shop) => shop.Read(records =>
    {
        var here = records.Jobs.Where(job => job.HandedOverAt == null && job.SplitAgreedAt != null).OrderBy(job => job.Id);
        IEnumerable<IQueryable<Job>> states =
        [
            here.Where(job => job.BoxedAt != null),
            here.Where(job => job.BoxedAt == null && job.MadeAt != null),
            here.Where(job => job.MadeAt == null && records.Boxes.Any(box => box.JobId == job.Id)),
            here.Where(job => job.MadeAt == null),
            records.Jobs.Where(job => job.HandedOverAt != null).OrderBy(job => job.Id),
        ];
        return states.SelectMany(jobs => jobs.Select(job => job.Id).Take(1).ToList()).Distinct().ToList();
    });

    /// <summary>One that was all, the last of several, one after which something was still to come.</summary>
    private static List<int> HandOvers(ShopUnderTest shop) => shop.Read(records =>
    {
        var all = records.HandOvers.OrderBy(one => one.Id);
        return all.Where(one => records.HandOvers.Any(other => other.JobId == one.JobId && other.Id < one.Id)).Select(one => one.Id).Take(1)
            .Concat(all.Where(one => records.Boxes.Any(box => box.JobId == one.JobId && box.HandOverId != one.Id)).Select(one => one.Id).Take(1))
            .Concat(all.Select(one => one.Id).Take(1))
            .Distinct().ToList();
    });

    private static List<int> Jobs(ShopUnderTest shop, System.Linq.Expressions.Expression<Func<Job, bool>> which) =>
        shop.Read(records => records.Jobs.Where(which).OrderBy(job => job.Id).Select(job => job.Id).ToList());
}
