using System.Globalization;
using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Curing;
using ProcessorDesk.Trade.Grinding;
using ProcessorDesk.Trade.Process;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Bench;

/// <summary>What the stations of the demo say on their pages, and what the bench says to the same figures.</summary>
public sealed class StationsAgreeTests(DemoUnderTest shop) : IClassFixture<DemoUnderTest>
{
    [Fact]
    public async Task The_counter_and_the_bench_foresee_the_same()
    {
        using var desk = await Manager();
        var deer = shop.Read(records => records.Animals.AsNoTracking().Include(animal => animal.Shares)
            .Where(animal => animal.Species == Species.WhiteTailDeer && animal.ArrivalState == ArrivalState.FieldDressed && animal.Shares.Count == 1)
            .Where(animal => records.Shares.Count(share => share.JobId == animal.Shares.First().JobId) == 1 && animal.Shares.First().Job.CuttingStartedAt == null)
            .OrderBy(animal => animal.Id).First());
        var arrived = shop.Read(records => records.WeighIns.Where(one => one.AnimalId == deer.Id && one.Kind == WeighInKind.Arrival && one.Strike == null).Select(one => one.Net).First());

        var order = await desk.Open($"/Counter/Order/{deer.Shares.Single().JobId}");
        var bench = await Answer(FormattableString.Invariant($"yield?species=deer&from=fieldDressed&to=boneless&weightLb={decimal.Round(arrived.Pounds, 3)}"));

        order.Expect(Tenths(bench, "typicalLb") + " lb boneless", $"Usually{Tenths(bench, "usualLowLb")} to {Tenths(bench, "usualHighLb")} lb", $"At the extremes{Tenths(bench, "extremeLowLb")} to {Tenths(bench, "extremeHighLb")} lb", bench.GetProperty("source").GetString()!);
    }

    [Fact]
    public async Task The_grind_and_the_bench_split_the_same()
    {
        using var desk = await Manager();
        var jobs = shop.Read(records => records.Jobs
            .Where(job => job.CuttingDoneAt != null && job.HandedOverAt == null && job.Asks.Any() && !records.AgreedSplits.Any(split => split.JobId == job.Id && split.WithdrawnAt == null))
            .OrderBy(job => job.Id).Select(job => job.Id).ToList());
        Assert.NotEmpty(jobs);

        foreach (var job in jobs)
        {
            var page = await desk.Open($"/Grind/Split/{job}");
            var lean = page.Document.QuerySelector("tfoot td[data-label=Lean]")!.TextContent;
            var asks = shop.Read(records => records.PlanGrind([.. records.GrindOrders.AsNoTracking().Where(ask => ask.JobId == job).OrderBy(ask => ask.Position)], Weight.Zero, ScaleDivision.HundredthPound)
                .Lines.Select(line => line.Ask.ToTrade()).ToList());
            var bench = await Answer($"split?leanLb={lean}&divisionLb=0.01" + string.Concat(asks.SkipLast(asks[^1].Kind == AskKind.OwnLean ? 1 : 0).Select(ask => "&ask=" + Uri.EscapeDataString(Entry(ask)))));

            var rows = page.Document.QuerySelectorAll("tbody tr").Select(row => string.Join(' ', row.QuerySelectorAll("td.number").Select(cell => Figure(cell.TextContent))));
            var answered = bench.GetProperty("allotments").EnumerateArray().Select(row => string.Join(' ', ((string[])["leanLb", "fatLb", "blockLb", "greenLb", "finishedLb"]).Select(figure => row.GetProperty(figure).GetDecimal().ToString("0.00", CultureInfo.InvariantCulture))));
            Assert.Equal(rows, answered);
        }
    }

    /// <summary>The cure the grind shows for a product, on the meat block and the stated strength of its formula.</summary>
    [Fact]
    public async Task The_grind_and_the_bench_check_a_cure_the_same()
    {
        using var desk = await Manager();
        var cured = shop.Read(records => records.GrindAllotments.AsNoTracking()
            .Include(one => one.FormulaVersion).ThenInclude(formula => formula.Product)
            .Include(one => one.FormulaVersion).ThenInclude(formula => formula.Ingredients)
            .Where(one => one.FormulaVersion.Product.Cured)
            .Join(records.AgreedSplits.Where(split => split.WithdrawnAt == null), one => one.AgreedSplitId, split => split.Id, (one, split) => new { split.JobId, Allotment = one })
            .AsEnumerable().Where(one => one.Allotment.MeatBlock.IsPositive).Take(5).ToList());
        Assert.NotEmpty(cured);

        foreach (var one in cured)
        {
            var page = await desk.Open($"/Grind/Split/{one.JobId}");
            var cure = one.Allotment.FormulaVersion.ToTrade().Lines.Single(line => line.HoldsCure);
            var meat = decimal.Round(one.Allotment.MeatBlock.Pounds, 2);
            var most = await Answer(FormattableString.Invariant($"cure?method=comminuted&meatLb={meat}&nitritePct={cure.Nitrite.Percent}&nitratePct={cure.Nitrate.Percent}"));
            var grams = decimal.Parse(Figure(page.Document.QuerySelectorAll("section[aria-labelledby=cure] .panel").First(panel => panel.QuerySelector("h3")!.TextContent == one.Allotment.FormulaVersion.Product.Name).QuerySelector("dd")!.TextContent), NumberStyles.Number, CultureInfo.InvariantCulture);
            var dose = await Answer(FormattableString.Invariant($"cure?method=comminuted&meatLb={meat}&cureG={grams}&nitritePct={cure.Nitrite.Percent}&nitratePct={cure.Nitrate.Percent}"));

            page.Expect("At most" + most.GetProperty("maxCureG").GetDecimal().ToString("#,0.0", CultureInfo.InvariantCulture) + " g");
            page.Expect("Nitrite going in" + PpmText.Print(dose.GetProperty("nitritePpm").GetDecimal(), CureLimits.ComminutedNitrite, CureLimits.KeepRefrigeratedLeast));
            page.Expect(dose.GetProperty("meets").GetBoolean() ? "Meets the limit" : "Does not meet the limit");
        }
    }

    [Fact]
    public async Task The_kitchen_and_the_bench_judge_a_record_the_same()
    {
        using var desk = await Manager();
        var batches = shop.Read(records => records.BatchReadings.AsNoTracking().Where(one => one.StruckAt == null && one.Temperature != null).ToList())
            .GroupBy(one => one.BatchId).Where(batch => batch.Any(one => one.Stage == ReadingStage.Chilling)).ToList();
        Assert.NotEmpty(batches);

        foreach (var batch in batches)
        {
            var page = await desk.Open($"/Kitchen/Batch/{batch.Key}");
            var cooking = await Answer("lethality?log=6.5" + Readings(batch, ReadingStage.Cooking, probe => probe.Min(one => one.Temperature!.Value)));
            var chilling = await Answer("cooling?option=1" + Readings(batch, ReadingStage.Chilling, probe => probe.Max(one => one.Temperature!.Value)));

            var dwell = TimeSpan.FromTicks((long)(cooking.GetProperty("dwellSeconds").GetDecimal() * TimeSpan.TicksPerSecond));
            var row = cooking.GetProperty("row");
            page.Expect(row.ValueKind == JsonValueKind.Null ? "is shown for no time" : $"{ProcessTime.Print(dwell)} at or above {row.GetDecimal():0.0} °F");
            Assert.Contains(Words(cooking, "the table row"), page.Document.QuerySelector("#cooking")!.TextContent, StringComparison.Ordinal);
            Assert.Contains(Words(chilling, "the cooling option"), page.Document.QuerySelector("#chilling")!.TextContent, StringComparison.Ordinal);
        }
    }

    /// <summary>In the demo a tap on a name is enough.</summary>
    private async Task<Desk> Manager()
    {
        var desk = shop.Stranger();
        var door = await desk.Open("/Door");
        await door.Press(door.Document.QuerySelectorAll("button").First(button => button.TextContent.Contains("Manager", StringComparison.Ordinal)).TextContent.Trim());
        return desk;
    }

    private async Task<JsonElement> Answer(string address)
    {
        var (status, _, json) = await shop.Ask(address);
        Assert.True((int)status == 200, $"{address}: {json}");
        return json;
    }

    private static string Tenths(JsonElement bench, string figure) =>
        decimal.Round(bench.GetProperty(figure).GetDecimal(), 1, MidpointRounding.AwayFromZero).ToString("0.0", CultureInfo.InvariantCulture);

    private static string Figure(string cell) => cell.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)[0];

    private static string Entry(GrindAsk ask)
    {
        var blend = ask.Blend;
        var (kind, amount) = ask.Kind switch
        {
            AskKind.OwnLean => ("lean", ask.Amount.Pounds),
            AskKind.Finished => ("finished", ask.Amount.Pounds),
            AskKind.Percent => ("percent", ask.Percent.Percent),
            AskKind.Rest => ("rest", 0m),
        };
        return FormattableString.Invariant($"{ask.Name};{kind};{decimal.Round(amount, 4)};{blend.LeanShare.Percent};{blend.Additions.PartsPerMillion / 10_000m};{blend.Loss.Percent};{decimal.Round(blend.SmallestRun.Pounds, 4)};{decimal.Round(blend.Step.Pounds, 4)}");
    }

    /// <summary>One line a moment: of several probes the one that counts.</summary>
    private static string Readings(IEnumerable<BatchReading> batch, ReadingStage stage, Func<IEnumerable<BatchReading>, Temperature> pick)
    {
        var moments = batch.Where(one => one.Stage == stage).GroupBy(one => one.TakenAt).OrderBy(moment => moment.Key).ToList();
        return string.Concat(moments.Select(moment => FormattableString.Invariant($"&reading={(decimal)(moment.Key - moments[0].Key).Ticks / TimeSpan.TicksPerMinute};{pick(moment).Fahrenheit}")));
    }

    private static string Words(JsonElement answer, string rule) => answer.GetProperty("verdict").GetString() switch
    {
        "meets" => "meets " + rule,
        "doesNotMeet" => "does not meet",
        _ => "not shown",
    };
}
