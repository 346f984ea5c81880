using ProcessorDesk.Records;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Kitchen;

/// <summary>
/// Readings typed off the chart. The rows are those of FSIS-GD-2021-14, Table 2: 158 °F at once; from 130 to 80 °F in an hour and a half and to
/// 40 in five more is option 1 (Ohio State University meat science). The shop's clock shows nine in the morning, Friday 27 November.
/// </summary>
public sealed class ReadingsTests(KitchenFloor shop) : IClassFixture<KitchenFloor>
{
    private static readonly (string Time, string Degrees)[] s_cooked = [("20:00", "45"), ("20:15", "70"), ("20:30", "95"), ("20:45", "120"), ("21:00", "140"), ("21:15", "155"), ("21:30", "160")];
    private static readonly (string Time, string Degrees)[] s_chilled = [("21:40", "135"), ("22:25", "100"), ("23:05", "75"), ("00:05", "65"), ("01:05", "55"), ("02:05", "45"), ("03:05", "39")];

    [Fact]
    public async Task A_smoked_batch_is_released_once_its_readings_meet()
    {
        var batch = shop.MixedRing(shop.Job("Ann Bower"));
        using var desk = await shop.SignIn(StaffRole.Kitchen, "Kitchen");
        shop.Do((records, act) => records.WeighFinished(batch, null, Trade.Weight.FromPounds(33.10m), Trade.Weight.Zero, act));
        (await desk.Open($"/Kitchen/Batch/{batch}")).Expect("Not yet. It lacks:", "Cooking: There are no readings.", "Chilling: There are no readings.", "FSIS-GD-2021-14");

        await Write(desk, batch, "Cooking", s_cooked);
        var page = await Write(desk, batch, "Chilling", s_chilled);

        page.Expect("7 readings are written down.", "Cooking: meets the table row", "Chilling: meets the cooling option", "Held against option 1");
        var released = await (await desk.Open($"/Kitchen/Batch/{batch}")).Press("Release to the owners");
        released.Expect("The batch is released.", "33.10 lb");
    }

    [Fact]
    public async Task A_time_without_a_day_is_the_last_time_the_clock_showed_it()
    {
        var batch = shop.MixedRing(shop.Job("Bud Cask"));
        using var desk = await shop.SignIn(StaffRole.Kitchen, "Kitchen");

        await Write(desk, batch, "Cooking", [("08:30", "150"), ("22:00", "120")]);

        var at = shop.Read(records => records.BatchReadings.Where(reading => reading.BatchId == batch).OrderBy(reading => reading.TakenAt).Select(reading => reading.TakenAt).ToList());
        // Winter time is six hours behind UTC: ten last night and half past eight this morning.
        Assert.Equal([new DateTime(2026, 11, 27, 4, 0, 0, DateTimeKind.Utc), new DateTime(2026, 11, 27, 14, 30, 0, DateTimeKind.Utc)], at);
    }

    [Fact]
    public async Task Degrees_of_both_kinds_are_taken_and_several_probes_on_one_line()
    {
        var batch = shop.MixedRing(shop.Job("Cam Dray"));
        using var desk = await shop.SignIn(StaffRole.Kitchen, "Kitchen");

        var page = await (await desk.Open($"/Kitchen/Readings/{batch}")).Send(
            "Write them down", ("Input.Stage", "Cooking"), ("Input.Lines[0].Time", "08:00"), ("Input.Lines[0].Probe1", "152.5"), ("Input.Lines[0].Probe2", "68.333 C"));

        page.Expect("2 readings are written down.", "152.5 °F", "154.99 °F"); // 68.333 °C is 154.9994 °F, down for cooking
    }

    [Fact]
    public async Task What_can_not_be_read_is_said_beside_its_field_and_stays()
    {
        var batch = shop.MixedRing(shop.Job("Dot Eames"));
        using var desk = await shop.SignIn(StaffRole.Kitchen, "Kitchen");

        var refused = await (await desk.Open($"/Kitchen/Readings/{batch}")).Send(
            "Write them down", ("Input.Day", "2026-11-27"), ("Input.Lines[0].Time", "09:30"), ("Input.Lines[0].Probe1", "150"), ("Input.Lines[1].Probe1", "hot"), ("Input.Lines[2].Time", "08:00"));

        refused.Expect("That time is still to come.", "Type the time it was read", "Type what the thermometer showed");
        Assert.Equal("150", refused.Form("Write them down").Value("Input.Lines[0].Probe1"));
        Assert.Empty(shop.Read(records => records.BatchReadings.Where(reading => reading.BatchId == batch).ToList()));
    }

    [Fact]
    public async Task More_lines_come_without_losing_what_was_typed_and_nothing_typed_is_nothing_saved()
    {
        var batch = shop.MixedRing(shop.Job("Eda Finch"));
        using var desk = await shop.SignIn(StaffRole.Kitchen, "Kitchen");
        var page = await desk.Open($"/Kitchen/Readings/{batch}");

        var more = await page.Send("More lines", ("Input.Lines[3].Time", "08:00"), ("Input.Lines[3].Probe1", "151"));

        Assert.Equal("151", more.Form("Write them down").Value("Input.Lines[3].Probe1"));
        (await more.Send("Write them down", ("Input.Lines[7].Time", "08:15"), ("Input.Lines[7].Probe1", "152"))).Expect("2 readings are written down.");
        Assert.Contains("Type at least one reading.", (await (await desk.Open($"/Kitchen/Readings/{batch}")).Press("Write them down")).Problems);
    }

    [Fact]
    public async Task A_wrong_reading_is_struck_with_a_reason_and_a_gap_is_shown()
    {
        var batch = shop.MixedRing(shop.Job("Fae Grant"));
        using var desk = await shop.SignIn(StaffRole.Kitchen, "Kitchen");
        var page = await Write(desk, batch, "Cooking", [("08:00", "150"), ("08:30", "510")]);
        page.Expect("Gap before it"); // half an hour; 15 minutes are the longest
        var wrong = shop.Read(records => records.BatchReadings.OrderBy(reading => reading.TakenAt).Last(reading => reading.BatchId == batch).Id);

        Assert.Equal(2, (await page.Press("Strike it out")).Problems.Count);
        var struck = await page.Send("Strike it out", ("Input.StrikeId", $"{wrong}"), ("Input.StrikeBecause", "150 was meant"));

        struck.Expect("The reading is struck out. It stays to be seen.", "150 was meant");
        Assert.NotNull(shop.Read(records => records.BatchReadings.Single(reading => reading.Id == wrong).StruckAt));
    }

    private static async Task<Screen> Write(Desk desk, int batch, string stage, (string Time, string Degrees)[] readings)
    {
        var page = await desk.Open($"/Kitchen/Readings/{batch}");
        if (readings.Length > 4)
            page = await page.Press("More lines");
        return await page.Send("Write them down", [("Input.Stage", stage), .. readings.SelectMany((one, i) => new[] { ($"Input.Lines[{i}].Time", one.Time), ($"Input.Lines[{i}].Probe1", one.Degrees) })]);
    }
}
