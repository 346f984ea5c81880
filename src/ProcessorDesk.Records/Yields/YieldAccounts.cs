using System.Text.Json;
using System.Text.Json.Serialization;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Yields;

namespace ProcessorDesk.Records;

/// <summary>The yield statement of a job as it is printed, and how an invoice keeps it.</summary>
public static class YieldAccounts
{
    private static readonly JsonSerializerOptions s_options = new() { Converters = { new MilligramsJson() } };

    /// <summary>The statement as the job's weights, its agreed split and its boxes stand; four queries.</summary>
    public static YieldAccount YieldAccountOf(this RecordsContext records, int jobId, ScaleDivision division)
    {
        var job = records.Jobs.Where(one => one.Id == jobId).Select(one => new { IsCut = one.CuttingDoneAt != null, IsBoxed = one.BoxedAt != null }).Single();
        return Of(records.WeightsOf(jobId, division), records.ProductsOnTheWay(jobId), job.IsCut, job.IsBoxed, division);
    }

    /// <param name="products">Of the agreed split; empty before.</param>
    /// <param name="isCut">Cutting is done: before, nothing can be said of what came out.</param>
    /// <param name="isBoxed">All of it is in boxes.</param>
    public static YieldAccount Of(JobWeights weights, IReadOnlyList<WayProduct> products, bool isCut, bool isBoxed, ScaleDivision division)
    {
        var yield = isCut ? LeanYield.Of(weights, division) : null;
        return new YieldAccount(
            ["Arrival", "Hanging"],
            [.. weights.Animals.Select(animal => Row(animal, division))],
            weights.Animals.Count > 1 ? Together(weights, division) : null,
            yield?.Forecast is { } forecast ? Range(yield, forecast, division) : null,
            !isCut ? "" : yield is null ? "No yield is published for the way this came in." : $"{yield.Came} {yield.StandingForOwner}",
            Way(weights, products, isCut, isBoxed, division));
    }

    public static string Keep(YieldAccount account) => JsonSerializer.Serialize(account, s_options);

    public static YieldAccount? Kept(string statement) =>
        statement == "" ? null : JsonSerializer.Deserialize<YieldAccount>(statement, s_options);

    private static YieldRow Row(AnimalWeights animal, ScaleDivision division)
    {
        var name = animal.Tag is null ? Wording.Of(animal.Species) : $"{Wording.Of(animal.Species)}, tag {animal.Tag}";
        if (animal.Fraction != Ratio.One)
            name += $", {animal.Fraction} of it";
        return new YieldRow(name, [Printed(animal.Arrival, division), Printed(animal.Hanging, division)]);
    }

    private static YieldRow Together(JobWeights weights, ScaleDivision division) => new(
        "Together",
        [Printed(Sum(weights, animal => animal.Arrival, division), division), Printed(Sum(weights, animal => animal.Hanging, division), division)]);

    /// <summary>The job's part of every animal; nothing where one was not weighed.</summary>
    private static Weight? Sum(JobWeights weights, Func<AnimalWeights, Weight?> figure, ScaleDivision division) =>
        weights.Animals.Count > 0 && weights.Animals.All(animal => figure(animal) is not null)
            ? division.Sum(weights.Animals.Select(animal => animal.Share.Of(figure(animal)!.Value, division)))
            : null;

    private static string Printed(Weight? weight, ScaleDivision division) => weight is { } known ? division.Print(known) : "";

    private static YieldRange Range(YieldStatement yield, YieldForecast forecast, ScaleDivision division) => new(
        $"From {division.Print(yield.From)}: {forecast.Print()} boneless.",
        forecast.Source,
        yield.Actual,
        division.Print(yield.Actual),
        forecast.Typical,
        forecast.UsualLow,
        forecast.UsualHigh,
        forecast.ExtremeLow,
        forecast.ExtremeHigh);

    private static List<WayStep> Way(JobWeights weights, IReadOnlyList<WayProduct> products, bool isCut, bool isBoxed, ScaleDivision division)
    {
        var way = new WayOfJob(division);
        if (Sum(weights, animal => animal.Arrival, division) is { } arrival)
            way.Stage("As it came in", arrival);
        if (Sum(weights, animal => animal.Hanging, division) is { } hanging)
            way.Come("Hanging", hanging, "Hide, head, feet");
        if (!isCut)
            return way.Steps;
        way.Lose("Bone", weights.Bone);
        way.Lose("Fat trimmed off", weights.Fat);
        way.Lose("Thrown out", weights.Discard);
        way.Come("Boneless meat", division.Sum([weights.Lean, weights.Cuts]), "Not weighed apart");
        if (products.Any(one => one.Green.IsPositive))
            Make(way, weights.Cuts, products, division);
        if (isBoxed)
            way.Come("In boxes", weights.Boxes, "Lost in packing", "Wrapping");
        return way.Steps;
    }

    private static void Make(WayOfJob way, Weight cuts, IReadOnlyList<WayProduct> products, ScaleDivision division)
    {
        way.Add("Pork or fat added", division.Sum(products.Select(one => one.AddedFat)));
        way.Add("Spices, cure, water", division.Sum(products.Select(one => one.Green - one.MeatBlock)));
        way.Lose("Thrown out in the kitchen", division.Sum(products.Where(one => one.IsThrownOut).Select(one => one.Green)));
        var kept = products.Where(one => !one.IsThrownOut).ToList();
        var isMade = kept.All(one => one.Finished is not null || one.Green.IsZero);
        way.Come(isMade ? "Made" : "Made, about", division.Sum([.. kept.Select(one => one.Finished ?? one.Expected), cuts]), "Cooking and drying");
    }

    private sealed class MilligramsJson : JsonConverter<Weight>
    {
        public override Weight Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            Weight.FromMilligrams(reader.GetInt64());

        public override void Write(Utf8JsonWriter writer, Weight value, JsonSerializerOptions options) =>
            writer.WriteNumberValue(value.Milligrams);
    }
}
