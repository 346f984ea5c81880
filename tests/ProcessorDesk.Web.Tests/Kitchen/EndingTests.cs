using ProcessorDesk.Records;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Kitchen;

/// <summary>What is done about a batch that does not meet, page by page. 129 °F meets no row: the table begins at 130 (FSIS-GD-2021-14, Table 2).</summary>
public sealed class EndingTests(KitchenFloor shop) : IClassFixture<KitchenFloor>
{
    private static readonly (string Time, string Degrees)[] s_cold = [("20:00", "45"), ("20:15", "90"), ("20:30", "120"), ("20:45", "129")];
    private static readonly (string Time, string Degrees)[] s_chilled = [("21:40", "135"), ("22:25", "100"), ("23:05", "75"), ("00:05", "65"), ("01:05", "55"), ("02:05", "45"), ("03:05", "39")];

    [Fact]
    public async Task A_batch_whose_log_fails_lists_its_choices_and_is_released_by_the_managers_letter_alone()
    {
        var batch = Cold("Ann Bower");
        using var kitchen = await shop.SignIn(StaffRole.Kitchen, "Kitchen");
        using var manager = await shop.SignIn(StaffRole.Manager, "Kitchen");
        var page = await kitchen.Open($"/Kitchen/Batch/{batch}");
        page.Expect("Cooking: does not meet", "Cooking: what can be done", "judge it in a letter", "Tell its owners");
        Assert.DoesNotContain("Release to the owners", page.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("Expert's letter", (await kitchen.Open($"/Kitchen/Ending/{batch}")).Text, StringComparison.Ordinal);

        var form = await manager.Open($"/Kitchen/Ending/{batch}");
        var refused = await form.Send("Write it down", ("Input.Kind", "ExpertsLetter"), ("Input.Stage", "Cooking"), ("Input.Name", "Dr. Ida Marsh"));
        Assert.Equal(2, refused.Problems.Count);
        Assert.Equal("Dr. Ida Marsh", refused.Form("Write it down").Value("Input.Name"));
        var written = await refused.Send("Write it down", ("Input.On", "2026-11-27"), ("Input.Reference", "Letter 26-114"));
        written.Expect("Expert's letter: written down.", "What was done about it", "Dr. Ida Marsh, Fri 27 Nov", "Letter 26-114", "Written down by");

        var released = await (await kitchen.Open($"/Kitchen/Batch/{batch}")).Press("Release to the owners");
        released.Expect("The batch is released.");
        var paper = await PdfText.Of(kitchen, $"/Kitchen/Record/{batch}");
        Assert.Contains("Cooking: does not meet", paper, StringComparison.Ordinal);
        Assert.Contains("Letter 26-114", paper, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_manager_throws_a_batch_out_once_its_owners_are_told_and_nobody_else_is_offered_it()
    {
        var batch = shop.MixedRing(shop.Job("Fae Grant"));
        using var kitchen = await shop.SignIn(StaffRole.Kitchen, "Kitchen");
        using var manager = await shop.SignIn(StaffRole.Manager, "Kitchen");
        var number = shop.Read(records => records.Batches.Single(one => one.Id == batch).Number);
        (await manager.Open($"/Kitchen/Ending/{batch}")).Expect("The owners have to know first.");
        var told = await (await kitchen.Open($"/Kitchen/Ending/{batch}")).Send(
            "Write it down", ("Input.Kind", "OwnersTold"), ("Input.Name", "Kit Hollow"), ("Input.On", "2026-11-27"), ("Input.Reference", "by telephone at noon"));
        told.Expect("Owners told: written down.");
        Assert.DoesNotContain($"Throw batch {number} out", (await kitchen.Open($"/Kitchen/Ending/{batch}")).Text, StringComparison.Ordinal);
        var page = await manager.Open($"/Kitchen/Ending/{batch}");
        page.Expect("Nothing of it goes back to Fae Grant, and this can't be undone.");

        Assert.Contains("Say why it is thrown out.", (await page.Press($"Throw batch {number} out")).Problems);
        var gone = await page.Send($"Throw batch {number} out", ("Input.DiscardBecause", "the smoker failed"));

        gone.Expect("Thrown out", "the smoker failed", "Kit Hollow");
        Assert.Empty(gone.Document.QuerySelectorAll("main form"));
    }

    [Fact]
    public async Task Pieces_and_what_stays_in_the_machines_are_typed_with_the_finished_weight()
    {
        var batch = shop.MixedRing(shop.Job("Gil Hope"));
        using var desk = await shop.SignIn(StaffRole.Kitchen, "Kitchen");

        var saved = await (await desk.Open($"/Kitchen/Weigh/{batch}")).Send("Save the weight", ("Input.Gross", "33.10"), ("Input.Left", "1.20"));

        saved.Expect("33.10 lb saved.", "Left in the machines", "1.20 lb");
        // 25.00 lb lean, 10.71 fat and 648.0 g (1.43 lb) are 37.14 lb; less 33.10 and 1.20 leaves 2.84.
        (await desk.Open($"/Kitchen/Batch/{batch}")).Expect("Where its weight went", "Left in the machines", "1.20 lb", "2.84 lb");
    }

    [Fact]
    public async Task The_programme_of_the_smokehouse_is_kept_with_the_batch_and_stands_on_its_record()
    {
        var batch = shop.MixedRing(shop.Job("Ida Jones"));
        using var desk = await shop.SignIn(StaffRole.Kitchen, "Kitchen");

        var kept = await (await desk.Open($"/Kitchen/Batch/{batch}")).Send("Keep the programme", ("Input.Programme", "Dry 130 °F 60 min\nSmoke 150 °F 90 min"));

        kept.Expect("The programme is kept.", "Smoke 150 °F 90 min");
        Assert.Contains("Smoke 150 °F 90 min", await PdfText.Of(desk, $"/Kitchen/Record/{batch}"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Readings_are_drawn_with_the_row_that_decides()
    {
        var batch = Cold("Kay Low");
        using var desk = await shop.SignIn(StaffRole.Kitchen, "Kitchen");

        var page = await desk.Open($"/Kitchen/Readings/{batch}");

        var charts = page.Document.QuerySelectorAll("svg.chart[role=img]");
        Assert.NotEmpty(charts);
        Assert.Contains(charts, chart => chart.QuerySelector("desc")!.TextContent.Contains("1 probe from 8:00 PM to 8:45 PM", StringComparison.Ordinal));
        // From 135 to 100 °F in 45 minutes, 130 °F is left 6 minutes and a little after 21:40; an hour and a half later it is 23:16.
        Assert.Contains(charts, chart => chart.TextContent.Contains("80 °F by 11:16 PM", StringComparison.Ordinal));
    }

    /// <summary>Mixed, cooked to 129 °F last night, chilled well, weighed.</summary>
    private int Cold(string owner)
    {
        var batch = shop.MixedRing(shop.Job(owner));
        shop.Do((records, act) => records.NoteReadings(batch, [.. Readings(batch, ReadingStage.Cooking, s_cold, act), .. Readings(batch, ReadingStage.Chilling, s_chilled, act)], act));
        shop.Do((records, act) => records.WeighFinished(batch, null, Trade.Weight.FromPounds(33.10m), Trade.Weight.Zero, act));
        return batch;
    }

    /// <summary>Winter time is six hours behind UTC.</summary>
    private static IEnumerable<BatchReading> Readings(int batch, ReadingStage stage, (string Time, string Degrees)[] lines, Act act) => lines.Select(line =>
    {
        var time = TimeOnly.Parse(line.Time, System.Globalization.CultureInfo.InvariantCulture);
        var day = time.Hour < 12 ? new DateOnly(2026, 11, 27) : new DateOnly(2026, 11, 26);
        return BatchReading.OfTemperature(
            batch, stage, 1, Trade.Temperature.FromFahrenheit(decimal.Parse(line.Degrees, System.Globalization.CultureInfo.InvariantCulture)), DateTime.SpecifyKind(day.ToDateTime(time).AddHours(6), DateTimeKind.Utc), act.Now, act.Hand.Id);
    });
}
