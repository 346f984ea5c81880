using ProcessorDesk.Records;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Grind;

public sealed class TrimmedShop : ShopUnderTest
{
    public TrimmedShop() => TrimmedJob.Prepare(this);
}

/// <summary>Expected figures are worked by hand beside each; 6.25 % cure at 4 oz to 100 lb is the published use level (9 CFR 424.21(c)).</summary>
public sealed class SplitPageTests(TrimmedShop shop) : IClassFixture<TrimmedShop>
{
    [Fact]
    public async Task The_page_shows_what_the_trim_allows_with_the_cure_and_its_source()
    {
        var job = TrimmedJob.Make(shop);
        using var desk = await shop.SignIn(StaffRole.Cutter, "Grind");

        var page = await desk.Open($"/Grind/Split/{job}");

        page.Expect("92.75");                                          // 31.52 + 26.38 + 19.20 + 15.65
        Assert.Equal(["25.00", "10.71", "35.71", "37.14"], Figures(page, "Ring sausage")[..4]);  // 25 × 30/70; 35.71 × 1.04 = 37.1384
        Assert.Equal(["18.19", "4.55", "22.74", "23.54"], Figures(page, "Summer sausage")[..4]); // 20 / 0.85 / 1.035 × 0.80 = 18.1870
        Assert.Equal(["11.03", "3.68", "14.71", "15.00"], Figures(page, "Hot sausage")[..4]);    // 15 / 1.02 × 0.75 = 11.0294
        Assert.Equal("38.53", Figures(page, "Plain ground")[0]);       // 92.75 − 25.00 − 18.19 − 11.03
        page.Expect("40.4 g");                                         // 35.71 lb × 0.0025 = 40.49 g, down to 0.1 g
        page.Expect("25.7 g");                                         // 22.74 lb × 0.0025 = 25.79 g
        page.Expect("156.25 ppm", "9 CFR 424.21");
        page.Expect("107.8", "91.6", "123.9");                         // 224.5 × 0.48 = 107.76, ± 15 %
        Assert.DoesNotContain("Outside the published range", page.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Agreeing_keeps_the_split_and_locks_the_asks()
    {
        var job = TrimmedJob.Make(shop);
        using var desk = await shop.SignIn(StaffRole.Cutter, "Grind");

        var page = await (await desk.Open($"/Grind/Split/{job}")).Press("Agree this split");

        page.Expect("The split is agreed", "Agreed by");
        var kept = shop.Read(records => records.GrindAllotments
            .Where(one => records.AgreedSplits.Any(split => split.Id == one.AgreedSplitId && split.JobId == job))
            .OrderBy(one => one.Position).Select(one => one.Lean).ToList());
        Assert.Equal([25.00m, 18.19m, 11.03m, 38.53m], kept.Select(lean => Trade.ScaleDivision.HundredthPound.Figure(lean)));
        Assert.True(shop.Read(records => records.Jobs.Single(one => one.Id == job).AsksLocked));
    }

    [Fact]
    public async Task A_second_press_agrees_nothing_twice()
    {
        var job = TrimmedJob.Make(shop);
        using var desk = await shop.SignIn(StaffRole.Cutter, "Grind");
        var page = await desk.Open($"/Grind/Split/{job}");

        await page.Press("Agree this split");
        var again = await page.Press("Agree this split");

        Assert.Empty(again.Problems);
        Assert.Equal(1, shop.Read(records => records.AgreedSplits.Count(split => split.JobId == job)));
    }

    [Fact]
    public async Task A_lean_weighed_anew_since_the_page_was_shown_is_not_agreed_to_unseen()
    {
        var job = TrimmedJob.Make(shop);
        using var desk = await shop.SignIn(StaffRole.Cutter, "Grind");
        var page = await desk.Open($"/Grind/Split/{job}");
        shop.Write((records, act) =>
        {
            var wrong = records.WeighIns.First(weighIn => weighIn.JobId == job);
            wrong.StrikeOut("read off the wrong lug", act.Now, shop.StaffOf(StaffRole.Cutter));
            return Outcome.Done();
        });

        var refused = await page.Press("Agree this split");

        refused.Expect("The lean was 92.75 lb when this page was shown and is 61.23 lb now."); // 92.75 − 31.52
        Assert.False(shop.Read(records => records.Jobs.Single(one => one.Id == job).AsksLocked));
    }

    [Fact]
    public async Task Meat_on_hold_is_not_split_and_the_page_says_why()
    {
        var job = TrimmedJob.Make(shop);
        shop.Write((records, act) =>
        {
            TrimmedJob.AnimalOf(records, job).PutOnHold(HoldReason.DiseaseTest, "Sample 88", act.Now, shop.StaffOf(StaffRole.Manager));
            return Outcome.Done();
        });
        using var desk = await shop.SignIn(StaffRole.Cutter, "Grind");

        var page = await (await desk.Open($"/Grind/Split/{job}")).Press("Agree this split");

        page.Expect("is on hold: waiting for the disease test");
        Assert.Equal(0, shop.Read(records => records.AgreedSplits.Count(split => split.JobId == job)));
    }

    [Fact]
    public async Task A_split_is_withdrawn_with_a_reason_only_and_stays_in_the_records()
    {
        var job = TrimmedJob.Make(shop);
        using var desk = await shop.SignIn(StaffRole.Cutter, "Grind");
        var agreed = await (await desk.Open($"/Grind/Split/{job}")).Press("Agree this split");

        var refused = await agreed.Press("Withdraw it");
        refused.Expect("Say why the split is taken back.");
        var withdrawn = await refused.Send("Withdraw it", ("Withdrawing.Because", "The owner phoned"));

        withdrawn.Expect("The split is withdrawn");
        Assert.Equal("The owner phoned", shop.Read(records => records.AgreedSplits.Single(split => split.JobId == job).WithdrawnBecause));
        Assert.False(shop.Read(records => records.Jobs.Single(one => one.Id == job).AsksLocked));
    }

    [Fact]
    public async Task Trim_still_coming_is_not_agreed_over()
    {
        var job = TrimmedJob.Make(shop, finished: false);
        using var desk = await shop.SignIn(StaffRole.Cutter, "Grind");

        var page = await (await desk.Open($"/Grind/Split/{job}")).Press("Agree this split");

        page.Expect("Cutting is not finished: more trim may come.");
    }

    [Fact]
    public async Task An_order_of_cuts_alone_has_a_split_of_nothing_so_that_it_can_leave()
    {
        var job = TrimmedJob.Make(shop);
        shop.Write((records, act) =>
        {
            foreach (var weighIn in records.WeighIns.Where(weighIn => weighIn.JobId == job).ToList())
                weighIn.StrikeOut("all of it went into roasts", act.Now, shop.StaffOf(StaffRole.Cutter));
            records.WeighIns.Add(WeighIn.OfJob(
                WeighInKind.CutPack, job, null, Trade.Weight.FromPounds(61m), Trade.Weight.Zero, new Reading("Bench", Trade.ScaleDivision.HundredthPound), act.Now, shop.StaffOf(StaffRole.Cutter)));
            return Outcome.Done();
        });
        using var desk = await shop.SignIn(StaffRole.Cutter, "Grind");

        var page = await (await desk.Open($"/Grind/Split/{job}")).Press("Agree this split");

        page.Expect("The split is agreed");
        Assert.Empty(page.Problems);
    }

    [Theory]
    [InlineData(StaffRole.Clerk, true)]
    [InlineData(StaffRole.Cutter, false)]
    [InlineData(StaffRole.Kitchen, false)]
    public async Task Only_a_hand_that_may_open_the_counter_is_led_to_the_order(StaffRole role, bool led)
    {
        var job = TrimmedJob.Make(shop);
        using var desk = await shop.SignIn(role, "Grind");

        var page = await desk.Open($"/Grind/Split/{job}");

        Assert.Equal(led, page.Document.QuerySelector($"a[href='/Counter/Order/{job}']") is not null);
    }

    [Fact]
    public async Task The_list_shows_what_is_to_be_split()
    {
        var job = TrimmedJob.Make(shop, owner: "Teodora Vance");
        var number = shop.Read(records => records.Jobs.Single(one => one.Id == job).Number);
        using var desk = await shop.SignIn(StaffRole.Kitchen, "Grind");

        (await desk.Open("/Grind")).Expect($"{number}", "Teodora Vance", "Ring sausage, Summer sausage, Hot sausage, Plain ground", "Fri 11 Dec");
    }

    private static List<string> Figures(Screen page, string product) =>
    [
        .. page.Document.QuerySelectorAll("table.list tbody tr")
            .First(row => row.QuerySelector("th")!.TextContent.Trim().StartsWith(product, StringComparison.Ordinal))
            .QuerySelectorAll("td.number").Select(cell => cell.TextContent.Trim().Split((char[]?)null)[0])
    ];
}
