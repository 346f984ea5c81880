using AngleSharp.Html.Dom;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Kitchen;

public sealed class PlanTests(KitchenFloor shop) : IClassFixture<KitchenFloor>
{
    [Fact]
    public async Task What_waits_is_listed_by_product_with_owner_weight_promise_and_pooling()
    {
        var job = shop.Job("Ada Fenn");
        using var desk = await shop.SignIn(StaffRole.Kitchen, "Kitchen");

        var page = await desk.Open("/Kitchen");

        page.Expect("Ring sausage", "Summer sausage", "Hot sausage", "Plain ground", "Ada Fenn", $"Job {shop.Number(job)}", "37.14 lb", "25.00 lb", "Fri 11 Dec", "Own meat only", "White-tail deer");
    }

    [Fact]
    public async Task A_ticked_allotment_becomes_a_batch_of_two_even_loads_and_leads_to_its_page()
    {
        var job = shop.Job("Bo Vance");
        using var desk = await shop.SignIn(StaffRole.Kitchen, "Kitchen");
        var page = await desk.Open("/Kitchen");

        var batch = await Plan(Tick(page, shop.Allotment(job, "Ring sausage")));

        batch.Expect("The batch is planned", "Ring sausage, batch", "2 loads", "18.57 lb", "Draw the meat for load 1"); // 37.14 / 2
        Assert.StartsWith("/Kitchen/Batch/", batch.Path, StringComparison.Ordinal);
        (await desk.Open("/Kitchen")).Expect("Draw the meat for load 1");
    }

    [Fact]
    public async Task Own_meat_with_anothers_is_refused_in_words_and_the_ticks_stay()
    {
        var own = shop.Job("Cy Adair");
        var pooled = shop.Job("Di Marsh", Pooling.Pooled);
        using var desk = await shop.SignIn(StaffRole.Kitchen, "Kitchen");
        var page = await desk.Open("/Kitchen");

        var refused = await Plan(Tick(page, shop.Allotment(own, "Hot sausage"), shop.Allotment(pooled, "Hot sausage")));

        Assert.Contains($"The owner of job {shop.Number(own)} did not agree to pooling. Make a batch of that job alone.", refused.Problems);
        Assert.True(Box(refused, shop.Allotment(own, "Hot sausage")).IsChecked);
        Assert.True(Box(refused, shop.Allotment(pooled, "Hot sausage")).IsChecked);
        Assert.NotNull(refused.Document.QuerySelector("#Input_Allotments"));
    }

    [Fact]
    public async Task Owners_who_agreed_are_pooled_and_a_second_press_plans_nothing_twice()
    {
        var one = shop.Job("Em Rowan", Pooling.Pooled);
        var two = shop.Job("Fay Cole", Pooling.Pooled);
        using var desk = await shop.SignIn(StaffRole.Kitchen, "Kitchen");
        var ticked = Tick(await desk.Open("/Kitchen"), shop.Allotment(one, "Hot sausage"), shop.Allotment(two, "Hot sausage"));

        var batch = await Plan(ticked);
        var again = await Plan(ticked);

        batch.Expect("Pooled: each owner agreed", "Em Rowan, Fay Cole");
        Assert.Equal(batch.Path, again.Path);
    }

    [Fact]
    public async Task Held_meat_has_no_tick_and_says_why()
    {
        var job = shop.Job("Gil Frost");
        shop.Do((records, act) =>
        {
            TrimmedJob.AnimalOf(records, job).PutOnHold(HoldReason.DiseaseTest, null, act.Now, act.Hand.Id);
            return Outcome.Done(job);
        });
        using var desk = await shop.SignIn(StaffRole.Kitchen, "Kitchen");

        var page = await desk.Open("/Kitchen");

        page.Expect("On hold. Tag TW-1001: waiting for the disease test");
        Assert.Null(page.Document.QuerySelector($"#allotment-{shop.Allotment(job, "Ring sausage")}"));
    }

    [Fact]
    public async Task Nothing_ticked_is_no_batch()
    {
        shop.Job("Hal Stone");
        using var desk = await shop.SignIn(StaffRole.Kitchen, "Kitchen");

        var refused = await (await desk.Open("/Kitchen")).Press("Plan a batch");

        Assert.Contains("Tick what goes into the batch.", refused.Problems);
    }

    private static IHtmlInputElement Box(Screen page, string allotment) => (IHtmlInputElement)page.Document.QuerySelector($"#allotment-{allotment}")!;

    private static (Screen Page, string First) Tick(Screen page, params string[] allotments)
    {
        foreach (var allotment in allotments)
            Box(page, allotment).IsChecked = true;
        return (page, allotments[0]);
    }

    /// <summary>Ticks, then sends the form of the product that was ticked.</summary>
    private static Task<Screen> Plan((Screen Page, string First) ticked)
    {
        var form = Box(ticked.Page, ticked.First).Form!;
        return ticked.Page.Submit(form, (IHtmlButtonElement)form.QuerySelector(".actions button")!);
    }
}
