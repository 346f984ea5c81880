using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Yields;

namespace ProcessorDesk.Seasons.Tests.Generating;

/// <summary>Invoices, now and then one credited and issued anew; payments; parts; the hand-over.</summary>
internal static class AtPickup
{
    public static void Expect(Season season, JobInHand job)
    {
        var invoiced = season.Now + season.Dice.Minutes(10, 180);
        season.Plan(invoiced, "issue an invoice", StaffRole.Clerk, "Pickup", () => Invoice(season, job));
    }

    private static void Invoice(Season season, JobInHand job)
    {
        var first = Issue(season, job);
        var leaves = InTheCooler.Morning(season.Now, season.Dice.Between(1, 4)) + season.Dice.Minutes(0, 480);
        if (!season.Dice.In(1))
        {
            Leave(season, job, first, leaves);
            return;
        }

        season.Plan(season.Now + season.Dice.Minutes(20, 60), "credit an invoice", StaffRole.Clerk, "Pickup", () =>
        {
            var credit = first.Credit(season.TakeInvoiceNumber(), season.Now, season.Hand.Id);
            season.Add(credit);
            foreach (var line in credit.Lines)
                season.Add(line, credit);
            season.Plan(season.Now + season.Dice.Minutes(2, 20), "issue an invoice", StaffRole.Clerk, "Pickup", () => Leave(season, job, Issue(season, job), leaves));
        });
    }

    private static Invoice Issue(Season season, JobInHand job)
    {
        var shop = season.Floor.Settings;
        var weights = job.Animals.Select(animal => new AnimalWeights(
            animal.Animal.Id, animal.Animal.Species, animal.Animal.Tag, animal.Animal.ArrivalState, animal.Animal.ArrivedAt, OwnersShare.Alone(job.Fraction), animal.Arrival, animal.Hanging, null)).ToList();
        var prices = job.Prices.Prices.ToList();
        var charges = JobCharges.Of(
            prices, prices, shop, [.. weights.Select(ChargedAnimal.Of)], [.. job.Products.Select(Charged)], []);
        var invoice = new Invoice(
            season.TakeInvoiceNumber(), job.Job.Id, season.Now, season.Hand.Id,
            new InvoiceHeading(shop.Name, $"{job.Owner.Name}\n{job.Owner.Phone}", $"{shop.TaxWording} {shop.TaxRate.Print()}"),
            charges.All.Select((charge, i) => new InvoiceLine(
                i, charge.For, charge.OfId, charge.Line.Text, $"{charge.Line.Quantity} {charge.Line.Unit}".Trim(), charge.Line.Rate, charge.Line.Amount, charge.Line.Taxed, charge.Line.Tax)),
            YieldAccounts.Keep(Statement(job, weights, shop.BenchDivision)));
        season.Add(invoice);
        foreach (var line in invoice.Lines)
            season.Add(line, invoice);
        return invoice;
    }

    private static ChargedProduct Charged(ProductInHand product)
    {
        var kept = product.Allotment;
        return new(kept.ProductId, product.Formula.Product.Name, kept.Lean, kept.AddedFat, kept.Green, product.Finished!.Value, kept.Id);
    }

    /// <summary>As the app keeps it, with fewer steps on the way.</summary>
    private static YieldAccount Statement(JobInHand job, List<AnimalWeights> animals, ScaleDivision division)
    {
        var lean = division.Sum(job.Products.Select(product => product.Allotment.Lean));
        return new YieldAccount(
            ["Arrival", "Hanging"],
            [.. animals.Select(animal => new YieldRow($"{Wording.Of(animal.Species)}, tag {animal.Tag}", [division.Print(animal.Arrival!.Value), division.Print(animal.HotHanging!.Value)]))],
            null,
            null,
            "No yield is published for the way this came in.",
            [new WayStep(WayKind.Stage, "Boneless meat", lean + job.Cuts, division.Print(lean + job.Cuts))]);
    }

    private static void Leave(Season season, JobInHand job, Invoice invoice, DateTime at)
    {
        // One in twenty goes out with something still owed.
        var owing = invoice.Total > job.Paid && season.Dice.In(5);
        if (invoice.Total > job.Paid && !owing)
            season.Plan(at, "take a payment", StaffRole.Clerk, "Pickup", () => season.Add(new Payment(
                job.Job, invoice.Total - job.Paid, season.Dice.Of([PaymentMethod.Cash, PaymentMethod.Check, PaymentMethod.Card]), isDeposit: false, null, season.Now, season.Hand.Id)));
        if (job.Boxes.Count > 1 && season.Dice.In(10))
            season.Plan(at.AddMinutes(2), "hand over", StaffRole.Clerk, "Pickup", () => HandOver(season, job, owing, boxes: 1));
        season.Plan(at.AddMinutes(2) + season.Dice.Minutes(1, 600), "hand over", StaffRole.Clerk, "Pickup", () => HandOverAll(season, job, owing));
    }

    private static HandOver HandOver(Season season, JobInHand job, bool owing, int boxes)
    {
        var handOver = new HandOver(job.Job.Id, job.Owner.Name, owing, season.Now, season.Hand.Id);
        season.Add(handOver);
        foreach (var box in job.Boxes.Where(box => box.HandOver is null).Take(boxes))
        {
            box.Leave(handOver);
            season.Changed(box);
        }

        return handOver;
    }

    private static void HandOverAll(Season season, JobInHand job, bool owing)
    {
        var handOver = HandOver(season, job, owing, job.Boxes.Count);
        foreach (var part in job.Animals.SelectMany(animal => animal.Animal.Parts).Where(part => part.GivenAt is null))
        {
            part.Give(job.Owner.Name, season.Now, season.Hand.Id, handOver);
            season.Changed(part);
        }

        job.Job.HandOver(season.Now, season.Hand.Id, job.Owner.Name);
        season.Changed(job.Job);
    }
}
