using ProcessorDesk.Records;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Kitchen;

/// <summary>The plan of the day: two owners who agreed to pooling, one who did not, one on hold.</summary>
public sealed class DayPlanTests : IClassFixture<KitchenFloor>
{
    private readonly KitchenFloor _shop;
    private readonly int _own;
    private readonly int _pooled;
    private readonly int _other;

    public DayPlanTests(KitchenFloor shop)
    {
        _shop = shop;
        (_own, _pooled, _other) = (shop.Job("Ada Fenn"), shop.Job("Bo Vance", Pooling.Pooled), shop.Job("Cy Adair", Pooling.Pooled));
        var held = shop.Job("Di Marsh");
        shop.Do((records, act) =>
        {
            TrimmedJob.AnimalOf(records, held).PutOnHold(HoldReason.DiseaseTest, null, act.Now, act.Hand.Id);
            return Outcome.Done(held);
        });
    }

    [Fact]
    public async Task Owners_stay_apart_unless_all_agreed_and_what_is_held_stays_out()
    {
        using var desk = await _shop.SignIn(StaffRole.Kitchen, "Kitchen");

        var page = await desk.Open("/Kitchen/Plan");

        page.Expect("Ring sausage, Ada Fenn", "Ring sausage, pooled", "18.57 lb of 37.14 lb", "Not today", "Di Marsh", "On hold. Tag TW-1001: waiting for the disease test", "Pork trim");
        var (own, other) = (_shop.Number(_own), _shop.Number(_other));
        Assert.DoesNotContain(page.Document.QuerySelectorAll("table.loads tbody tr").Select(row => row.TextContent), row => row.Contains($"job {own}", StringComparison.Ordinal) && row.Contains($"job {other}", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Own_meat_moved_to_anothers_is_refused_by_name_and_nothing_can_be_planned()
    {
        using var desk = await _shop.SignIn(StaffRole.Kitchen, "Kitchen");
        var page = await desk.Open("/Kitchen/Plan");
        var pooledLoad = LoadOf(page, $"Bo Vance, job {_shop.Number(_pooled)}", "Hot sausage");

        var moved = await desk.Open($"/Kitchen/Plan?Move={_shop.Allotment(_own, "Hot sausage")}:{pooledLoad}");

        Assert.Contains(moved.Problems, problem => problem.Contains($"the meat of Ada Fenn, job {_shop.Number(_own)} is not to be pooled", StringComparison.Ordinal));
        moved.Expect("It breaks a promise");
        Assert.Empty(moved.Document.QuerySelectorAll("form[method=post] .main-action"));
    }

    [Fact]
    public async Task What_is_moved_to_another_day_stays_unplanned_and_the_rest_is_planned_once()
    {
        using var desk = await _shop.SignIn(StaffRole.Kitchen, "Kitchen");
        var waits = _shop.Allotment(_own, "Plain ground");
        var page = await desk.Open($"/Kitchen/Plan?Move={waits}:wait");
        page.Expect("Left for another day by hand.", "Back to the plan as proposed");
        var button = page.Document.QuerySelector(".main-action")!.TextContent.Trim();

        var done = await page.Press(button);
        var again = await page.Press(button);

        done.Expect("batches are planned");
        Assert.Equal("/Kitchen", again.Path);
        var planned = _shop.Read(records => records.BatchEntries.Where(entry => entry.LeftAt == null).Select(entry => entry.AllotmentId).ToList());
        Assert.DoesNotContain(int.Parse(waits, System.Globalization.CultureInfo.InvariantCulture), planned);
        Assert.Equal(planned.Count, planned.Distinct().Count());
        Assert.Contains(int.Parse(_shop.Allotment(_own, "Ring sausage"), System.Globalization.CultureInfo.InvariantCulture), planned);
    }

    [Fact]
    public async Task A_plan_that_is_no_longer_what_waits_is_shown_anew()
    {
        using var desk = await _shop.SignIn(StaffRole.Kitchen, "Kitchen");
        var page = await desk.Open("/Kitchen/Plan");
        _shop.Job("Em Rowan");

        var refused = await page.Press(page.Document.QuerySelector(".main-action")!.TextContent.Trim());

        Assert.Contains(refused.Problems, problem => problem.StartsWith("What waits has changed", StringComparison.Ordinal));
        refused.Expect("Em Rowan");
    }

    private static string LoadOf(Screen page, string whose, string product) =>
        page.Document.QuerySelectorAll("table.loads").Where(table => table.QuerySelector("caption")!.TextContent.StartsWith(product, StringComparison.Ordinal))
            .SelectMany(table => table.QuerySelectorAll("tbody tr")).First(row => row.TextContent.Contains(whose, StringComparison.Ordinal)).QuerySelector("th")!.TextContent.Trim();
}
