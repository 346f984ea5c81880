using System.Globalization;

namespace ProcessorDesk.Web.Pages.OwnersPage;

/// <summary>One station on the way of an owner's meat.</summary>
/// <param name="When">A day in words; empty for what is still to come.</param>
/// <param name="More">What there is to say of it; may be empty.</param>
public sealed record OwnersStep(string What, string When, string More, OwnersStep.Stand At)
{
    public enum Stand
    {
        Done,
        Now,
        ToCome,
    }

    /// <summary>The stand in a word, for whoever does not see the mark.</summary>
    public string Word => At switch
    {
        Stand.Done => "Done",
        Stand.Now => "Now",
        Stand.ToCome => "To come",
    };

    /// <summary>From the door to the truck. The first that is not done is where it is now.</summary>
    public static IReadOnlyList<OwnersStep> Of(OwnersJob job, ShopDay day)
    {
        var facts = job.Facts;
        var hung = job.Animals.Select(animal => animal.HungAt).OfType<DateTime>().ToList();
        List<(string What, string Doing, DateTime? DoneAt, DateTime? Since, string More)> all =
        [
            ("Came in", "Comes in", facts.TakenAt, null, string.Join("; ", job.Animals.Select(animal => CameAs(animal, job, day)))),
            ("Hung in the cooler", "Hangs in the cooler", facts.CuttingStartedAt, hung.Count > 0 ? hung.Min() : null, ""),
            ("Cut and weighed", "On the cutting table", facts.CuttingDoneAt, facts.CuttingStartedAt, ""),
            ("Trim divided as you asked", "Trim is divided as you asked", facts.SplitAgreedAt, facts.CuttingDoneAt, ""),
            ("Made in the kitchen", "In the kitchen", facts.MadeAt, facts.SplitAgreedAt, Made(job)),
            ("Boxed, in the freezer", "Goes into boxes", facts.BoxedAt, facts.MadeAt, Boxed(job, day)),
            ("Handed over", facts.BoxedAt is null ? "Pickup" : "Ready to be picked up", facts.HandedOverAt, facts.BoxedAt, Taken(job, day)),
        ];
        // What came boned never hung, and what is all cuts never was in the kitchen.
        all.RemoveAll(step => step.What == "Hung in the cooler" && hung.Count == 0 && facts.CuttingStartedAt is not null);
        all.RemoveAll(step => step.What == "Made in the kitchen" && facts.SplitAgreedAt is not null && job.Products.All(product => product.Green.IsZero));
        var now = all.FindIndex(step => step.DoneAt is null);
        return
        [
            .. all.Select((step, i) => step.DoneAt is { } done && (i < now || now < 0)
                ? new OwnersStep(step.What, day.Date(step.What == "Hung in the cooler" ? hung.DefaultIfEmpty(done).Min() : done), step.More, Stand.Done)
                : new OwnersStep(step.Doing, i == now && step.Since is { } since ? $"since {day.Date(since)}" : "", step.More, i == now ? Stand.Now : Stand.ToCome))
        ];
    }

    private static string CameAs(OwnersAnimal animal, OwnersJob job, ShopDay day)
    {
        var weights = job.Weights.Animals.Single(one => one.AnimalId == animal.Animal.AnimalId);
        return $"{animal.Name}, {OwnersWords.ArrivedAs(animal.Animal.ArrivalState)}{(weights.Arrival is { } arrival ? $", {Together(day.PrintRail(arrival))}" : "")}";
    }

    private static string Made(OwnersJob job)
    {
        var wanted = job.Products.Where(product => product.Green.IsPositive).ToList();
        var over = wanted.Count(product => product.State is KitchenState.Made or KitchenState.ThrownOut);
        return wanted.Count == 0 || job.Facts.MadeAt is not null ? "" : string.Create(CultureInfo.InvariantCulture, $"{over} of {wanted.Count} products made");
    }

    private static string Boxed(OwnersJob job, ShopDay day) => job.Boxes.Count switch
    {
        0 => "",
        var count => string.Create(CultureInfo.InvariantCulture,
            $"{count} {(count == 1 ? "box" : "boxes")}{(job.Facts.BoxedAt is null ? " so far" : "")}, {Together(day.Print(job.BoxedAway(day.Settings.BenchDivision)))}"),
    };

    private static string Taken(OwnersJob job, ShopDay day) => string.Join("; ", job.Boxes
        .Where(box => box.TakenAt is not null)
        .GroupBy(box => day.DayOf(box.TakenAt!.Value))
        .Select(boxes => string.Create(CultureInfo.InvariantCulture, $"{boxes.Count()} {(boxes.Count() == 1 ? "box" : "boxes")} taken {day.Date(boxes.Key)}")));

    /// <summary>A figure and its unit are not torn over two lines.</summary>
    private static string Together(string printed) => printed.Replace(' ', '\u00A0');
}
