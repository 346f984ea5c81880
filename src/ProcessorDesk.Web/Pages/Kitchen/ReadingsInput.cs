using System.Globalization;
using Microsoft.AspNetCore.Mvc.ModelBinding;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Kitchen;

/// <summary>Readings as they are typed off the thermometers or the paper log: a line a moment, a column a probe.</summary>
public sealed class ReadingsInput
{
    public const int Probes = 3;

    private const int LinesAtFirst = 4;

    public ReadingStage Stage { get; set; } = ReadingStage.Cooking;

    /// <summary>The day of the times; empty for the last time the clock showed each of them.</summary>
    public string Day { get; set; } = "";

    public List<Line> Lines { get; set; } = [.. Enumerable.Range(0, LinesAtFirst).Select(_ => new Line())];

    public int? StrikeId { get; set; }

    public string StrikeBecause { get; set; } = "";

    public void AddLines() => Lines.AddRange(Enumerable.Range(0, LinesAtFirst).Select(_ => new Line()));

    /// <summary>The readings this makes; what can't be read is noted on its field.</summary>
    public List<BatchReading> Read(ModelStateDictionary state, int batchId, ShopDay shop, int handId)
    {
        var readings = new List<BatchReading>();
        if (!Enum.IsDefined(Stage))
            state.AddModelError("Input.Stage", "Choose what was going on.");
        var day = ReadDay(state);
        foreach (var (i, line) in Lines.Index().Where(line => !line.Item.IsEmpty))
        {
            var field = FormattableString.Invariant($"Input.Lines[{i}]");
            if (ReadTime(state, line.Time, day, field + ".Time", shop) is not { } at)
                continue;
            foreach (var (place, typed) in line.Typed.Index().Where(one => one.Item.Trim() != ""))
            {
                // Rounding never helps: down where heat is to be shown, up where cold or little warmth is.
                var parsed = Stage == ReadingStage.Cooking ? TemperatureText.ParseShowingHeat(typed) : TemperatureText.ParseShowingCold(typed);
                var temperature = state.Read(parsed, FormattableString.Invariant($"{field}.Probe{place + 1}"));
                readings.Add(BatchReading.OfTemperature(batchId, Stage, place + 1, temperature, at, shop.Now, handId));
            }

            if (Stage == ReadingStage.Fermenting && line.Acidity.Trim() != "")
                readings.Add(BatchReading.OfAcidity(batchId, state.Read(PhText.Parse(line.Acidity), field + ".Acidity").Hundredths, at, shop.Now, handId));
            else if (line.Typed.All(typed => typed.Trim() == ""))
                state.AddModelError(field + ".Probe1", "Type what the thermometer showed, for example 152 or 66.5 C.");
        }

        return readings;
    }

    private DateOnly? ReadDay(ModelStateDictionary state)
    {
        if (Day.Trim() == "")
            return null;
        if (DateOnly.TryParseExact(Day.Trim(), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day))
            return day;
        state.AddModelError("Input.Day", "Type the day, or leave it empty for today.");
        return null;
    }

    private static DateTime? ReadTime(ModelStateDictionary state, string typed, DateOnly? day, string field, ShopDay shop)
    {
        if (!TimeOnly.TryParseExact(typed.Trim(), ["H:mm", "HH:mm", "H:mm:ss", "h:mm tt", "h:mmtt", "h tt"], CultureInfo.InvariantCulture, DateTimeStyles.None, out var time))
        {
            state.AddModelError(field, "Type the time it was read, for example 14:30.");
            return null;
        }

        if (day is not null)
        {
            var at = shop.ToUtc(day.Value.ToDateTime(time));
            if (at <= shop.Now)
                return at;
            state.AddModelError(field, "That time is still to come. Type when the thermometer was read.");
            return null;
        }

        var today = shop.ToUtc(shop.Today.ToDateTime(time));
        return today <= shop.Now ? today : shop.ToUtc(shop.Today.AddDays(-1).ToDateTime(time));
    }

    public sealed class Line
    {
        public string Time { get; set; } = "";

        public string Probe1 { get; set; } = "";

        public string Probe2 { get; set; } = "";

        public string Probe3 { get; set; } = "";

        public string Acidity { get; set; } = "";

        public IReadOnlyList<string> Typed => [Probe1, Probe2, Probe3];

        public bool IsEmpty => Typed.Append(Time).Append(Acidity).All(text => text.Trim() == "");
    }
}
