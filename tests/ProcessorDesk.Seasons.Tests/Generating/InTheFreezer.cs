using ProcessorDesk.Records;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Seasons.Tests.Generating;

/// <summary>Packs go into boxes: one for each product and one for the cuts; then the word that this is all.</summary>
internal static class InTheFreezer
{
    private static readonly Weight s_box = Weight.FromPounds(0.8m);

    public static void Expect(Season season, JobInHand job)
    {
        var at = InTheCooler.Morning(season.Now, 1) + season.Dice.Minutes(0, 240);
        var place = $"Shelf {season.Dice.Between(1, 60)}";
        foreach (var product in job.Products)
            season.Plan(at += season.Dice.Minutes(2, 6), "pack a box", StaffRole.Cutter, "Freezer", () => Pack(season, job, product.Finished!.Value, place, product));
        if (job.Cuts.IsPositive)
            season.Plan(at += season.Dice.Minutes(2, 6), "pack a box", StaffRole.Cutter, "Freezer", () => Pack(season, job, job.Cuts, place, null));
        season.Plan(at.AddMinutes(2), "finish boxing", StaffRole.Cutter, "Freezer", () => Finish(season, job));
    }

    private static void Pack(Season season, JobInHand job, Weight net, string place, ProductInHand? product)
    {
        var weighed = WeighIn.OfJob(
            WeighInKind.Box, job.Job.Id, null, net + s_box, s_box, new Reading("bench", season.Floor.Settings.BenchDivision), season.Now, season.Hand.Id);
        season.Add(weighed);
        var content = new BoxContent(0, product?.Allotment.Id, product?.Formula.Product.Name ?? "Cuts", Math.Max(1, (int)net.Pounds));
        var box = new Box(job.Boxes.Count + 1, weighed, place, [content], season.Now, season.Hand.Id);
        season.Add(box);
        season.Add(content, box);
        season.AddTicket(TicketKind.Box, box.Id);
        job.Boxes.Add(box);
    }

    private static void Finish(Season season, JobInHand job)
    {
        job.Job.Boxed(season.Now, season.Hand.Id);
        season.Changed(job.Job);
        AtPickup.Expect(season, job);
    }
}
