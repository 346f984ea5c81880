using System.Globalization;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Cutting;

public sealed class MoveTests(ShopUnderTest shop) : IClassFixture<ShopUnderTest>
{
    [Fact]
    public async Task A_lug_booked_to_the_wrong_job_is_moved_from_the_weigh_in_page()
    {
        var (desk, wrong, page) = await Weighed("Ann Alder");
        using var _ = desk;
        var (right, _) = shop.TakeIn("Ben Birch", 80m);
        shop.StartCutting(right);
        var link = page.Document.QuerySelectorAll("a.button").First(a => a.TextContent.StartsWith("Move", StringComparison.Ordinal));

        var moved = await (await desk.Open(link.GetAttribute("href")!)).Send("Move it", ("Input.JobNumber", Number(right)), ("Input.Because", "two lugs stood side by side"));

        Assert.Equal($"/Cutting/Sheet/{right}", moved.Path);
        moved.Expect($"moved from job {Number(wrong)} to job {Number(right)}.", "has a new ticket.", "17.00 lb");
        Assert.Equal((Weight.Zero, 17m), (shop.WeightsOf(wrong).Lean, decimal.Round(shop.WeightsOf(right).Lean.Pounds, 2)));
        (await desk.Open($"/Cutting/Sheet/{wrong}")).Expect("two lugs stood side by side");
    }

    [Fact]
    public async Task A_number_nobody_has_and_a_missing_reason_stay_beside_what_was_typed()
    {
        var (desk, job, _) = await Weighed("Cy Cedar");
        using var _d = desk;

        var page = await (await desk.Open($"/Cutting/Move/{LeanOf(job)}")).Send("Move it", ("Input.JobNumber", "98765"));

        Assert.Equal(["There is no job 98765. Look at its cut sheet or ticket.", "Say how it came to be booked wrong."], page.Problems);
        Assert.Equal("98765", page.Form("Move it").Value("Input.JobNumber"));
    }

    [Fact]
    public async Task Of_a_job_with_two_deer_the_page_asks_whose_meat_it_is()
    {
        var (desk, job, _) = await Weighed("Di Dogwood");
        using var _d = desk;
        var (right, deer) = shop.TakeIn("Ed Elm", 80m, 70m);
        shop.StartCutting(right);

        var asked = await (await desk.Open($"/Cutting/Move/{LeanOf(job)}")).Send("Move it", ("Input.JobNumber", Number(right)), ("Input.Because", "wrong number typed"));
        Assert.Equal(["Choose whose meat it is."], asked.Problems);
        asked.Expect("Ed Elm", shop.TagOf(deer[1]));
        (await asked.Send("Move it", ("Input.AnimalIds", $"{deer[1]}"))).Expect($"to job {Number(right)}.");

        Assert.Equal([deer[1]], shop.Read(records => records.Fillings.Where(one => one.JobId == right).SelectMany(one => one.Animals).Select(one => one.AnimalId).ToList()));
    }

    private string Number(int job) => shop.Read(records => records.Jobs.Single(one => one.Id == job).Number).ToString(CultureInfo.InvariantCulture);

    private int LeanOf(int job) => shop.Read(records => records.WeighIns.Single(one => one.JobId == job && one.Kind == WeighInKind.LeanTrim && one.Strike == null).Id);

    /// <summary>A job with 17.00 lb of lean in a lug of 3.10 lb, and the page as it is after the save.</summary>
    private async Task<(Desk Desk, int Job, Screen Page)> Weighed(string owner)
    {
        var (job, _) = shop.TakeIn(owner, 90m);
        shop.StartCutting(job);
        var desk = await shop.SignIn(StaffRole.Cutter, "Cutting");
        var page = await (await desk.Open($"/Cutting/WeighIn/{job}")).Send("Save the weight", ("Input.Lug", shop.AddLug(3.10m)), ("Input.Gross", "20.10"));
        return (desk, job, page);
    }
}
