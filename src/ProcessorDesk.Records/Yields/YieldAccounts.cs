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

    /// <summary>The statement as the job's weights and its agreed split stand; three queries.</summary>
    public static YieldAccount YieldAccountOf(this RecordsContext records, int jobId, ScaleDivision division)
    {
        var weights = records.WeightsOf(jobId, division);
        var allotments = records.GrindAllotments.AsNoTracking()
            .Where(one => records.AgreedSplits.Any(split => split.Id == one.AgreedSplitId && split.JobId == jobId && split.WithdrawnAt == null))
            .ToList();
        var yield = LeanYield.Of(weights, division);
        return new YieldAccount(
            ["Arrival", "Hanging"],
            [.. weights.Animals.Select(animal => Row(animal, division))],
            weights.Animals.Count > 1 ? Together(weights, division) : null,
            yield?.Forecast is { } forecast ? Range(yield, forecast, division) : null,
            yield is null ? "No yield is published for the way this came in." : $"{yield.Came} {yield.Standing}",
            Way(weights, allotments, division));
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
            ? division.Sum(weights.Animals.Select(animal => animal.Fraction.Times(figure(animal)!.Value)))
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

    private static List<WayStep> Way(JobWeights weights, IReadOnlyList<GrindAllotment> allotments, ScaleDivision division)
    {
        var way = new WayOfJob(division);
        if (Sum(weights, animal => animal.Arrival, division) is { } arrival)
            way.Stage("As it came in", arrival);
        if (Sum(weights, animal => animal.Hanging, division) is { } hanging)
            way.DownTo("Hanging", hanging, "Hide, head, feet");
        way.Lose("Bone", weights.Bone);
        way.Lose("Fat trimmed off", weights.Fat);
        way.Lose("Thrown out", weights.Discard);
        way.DownTo("Boneless meat", division.Sum([weights.Lean, weights.Cuts]), "Not weighed apart");
        way.Add("Pork or fat added", division.Sum(allotments.Select(one => one.AddedFat)));
        way.Add("Spices, cure, water", division.Sum(allotments.Select(one => one.Green - one.MeatBlock)));
        way.DownTo("Made, about", division.Sum([.. allotments.Select(one => one.Finished), weights.Cuts]), "Cooking and drying");
        return way.Steps;
    }

    private sealed class MilligramsJson : JsonConverter<Weight>
    {
        public override Weight Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            Weight.FromMilligrams(reader.GetInt64());

        public override void Write(Utf8JsonWriter writer, Weight value, JsonSerializerOptions options) =>
            writer.WriteNumberValue(value.Milligrams);
    }
}
