using ProcessorDesk.Trade;

namespace ProcessorDesk.Records.Tests.Kitchen;

/// <summary>What every batch goes through, in one go.</summary>
internal static class KitchenSteps
{
    /// <summary>Ring sausage of the two deer, 37.14 lb in two loads, drawn as planned and mixed: 12.50 lb lean each, 5.36 and 5.35 lb fat.</summary>
    public static (int Batch, MadeJob Job) MixedRing(this KitchenShop shop, string owner)
    {
        var job = shop.TwoDeer(owner);
        var batch = shop.Plan(job.Allotments[KitchenShop.Ring]);
        foreach (var (load, fat) in shop.LoadsOf(batch).Zip([5.36m, 5.35m]))
        {
            Expect(shop.Draw(load, job.Lugs[0], 12.50m));
            Expect(shop.Mix(load, fat));
        }

        return (batch, job);
    }

    /// <summary>
    /// A smokehouse record that meets: 158 °F at once meets its row (FSIS-GD-2021-14, Table 2), from 50 to 130 °F in less than six hours; then 130
    /// to 80 °F in 71 minutes and on to 40 °F in less than five hours (option 1, Ohio State University meat science).
    /// </summary>
    public static void CookAndChill(this KitchenShop shop, int batch)
    {
        var into = shop.File.Now;
        (int Minutes, int Degrees)[] cooked = [(0, 45), (15, 70), (30, 95), (45, 120), (60, 140), (75, 155), (90, 160)];
        (int Minutes, int Degrees)[] chilled = [(100, 135), (145, 100), (185, 75), (245, 65), (305, 55), (365, 45), (425, 39)];
        shop.File.Clock.Advance(TimeSpan.FromHours(8));
        shop.Must((records, act) => records.NoteReadings(batch,
        [
            .. cooked.Select(one => BatchReading.OfTemperature(batch, ReadingStage.Cooking, 1, Temperature.FromFahrenheit(one.Degrees), into.AddMinutes(one.Minutes), act.Now, act.Hand.Id)),
            .. chilled.Select(one => BatchReading.OfTemperature(batch, ReadingStage.Chilling, 1, Temperature.FromFahrenheit(one.Degrees), into.AddMinutes(one.Minutes), act.Now, act.Hand.Id)),
        ], act));
    }

    public static Outcome Weigh(this KitchenShop shop, int batch, int? load, decimal gross, decimal tare = 0m) =>
        shop.Try((records, act) => records.WeighFinished(batch, load, Weight.FromPounds(gross), Weight.FromPounds(tare), act));

    public static Outcome Release(this KitchenShop shop, int batch, string? support = null, Hand? hand = null) =>
        shop.Try((records, act) => records.ReleaseBatch(batch, support, act), hand);

    /// <summary>What a discard asks for first.</summary>
    public static void TellOwners(this KitchenShop shop, int batch) =>
        Expect(shop.Dispose(batch, DispositionKind.OwnersTold, null, "Kit Hollow", "by telephone: it is lost"));

    public static Outcome Dispose(this KitchenShop shop, int batch, DispositionKind kind, ReadingStage? stage, string name, string reference, DateOnly? on = null, Hand? hand = null) =>
        shop.Try((records, act) => records.WriteDisposition(
            batch, new DispositionOrder(kind, stage, name, on ?? DateOnly.FromDateTime(act.Now), reference), DateOnly.FromDateTime(act.Now), act), hand);

    public static string Text(this Outcome outcome) => string.Join(' ', outcome.Findings.Select(finding => finding.Text));

    public static void Expect(Outcome outcome) => Xunit.Assert.True(outcome.IsDone, outcome.Text());
}
