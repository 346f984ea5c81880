using ProcessorDesk.Records.Tests.Cast;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Formulas;
using ProcessorDesk.Trade.Grinding;

namespace ProcessorDesk.Records.Tests.Keeping;

/// <summary>A shop with a row in every guarded table, some of them closed.</summary>
public sealed class GuardedShop : IDisposable
{
    public GuardedShop()
    {
        Shop.Do(Fill);
        GuardedKitchen.Fill(Shop);
    }

    public ShopFile Shop { get; } = new();

    public void Dispose() => Shop.Dispose();

    private static Job Fill(RecordsContext records, Act act)
    {
        var job = Sample.Job(records, act);
        var deer = Sample.Deer(records, job, act, "WT 12");
        var filling = Sample.Lug(records, job, deer, act);
        Sample.Lean(records, filling, 22.5m, act).StrikeOut("wrong lug", act.Now, act.Hand.Id);
        filling.Empty(act.Now);
        Sample.Lug(records, job, deer, act);
        deer.PutOnHold(HoldReason.TooWarm, null, act.Now, act.Hand.Id).Release(act.Now, act.Hand.Id, "cold now");
        deer.PutOnHold(HoldReason.MissingTag, null, act.Now, act.Hand.Id);
        deer.KeepPart(PartKind.Antlers, null).Give("Sample Owner", act.Now, act.Hand.Id);
        deer.KeepPart(PartKind.Hide, null);
        act.NewTicket(TicketKind.Claim, job.Id);
        records.Payments.Add(new Payment(job, Money.FromDollars(20m), PaymentMethod.Cash, true, null, act.Now, act.Hand.Id));
        records.Invoices.Add(new Invoice(
            act.NextInvoiceNumber(), job.Id, act.Now, act.Hand.Id, new InvoiceHeading("Sample Meats", "Sample Owner", "Sales tax"),
            [new InvoiceLine(1, PriceFor.Animal, null, "Cutting", "1", "$85.00", Money.FromDollars(85m), false, Money.Zero)], "{}"));
        Cure(Sample.PlainGround(records), act);
        Split(records, job, act).Withdraw(act.Now, act.Hand.Id, "the owner called");
        records.SaveChanges();
        Split(records, job, act);
        return job;
    }

    private static void Cure(Product product, Act act) => product.Reformulate(new FormulaVersion(
        act.Now, Proportion.Whole, null, false, (Proportion.Zero, Proportion.Zero, Proportion.Zero), Weight.Zero, Weight.Zero,
        [new FormulaIngredient(1, "Salt", FormulaBasis.PercentOfBlock, 1.75m, Proportion.Zero, Proportion.Zero, false)]));

    private static AgreedSplit Split(RecordsContext records, Job job, Act act)
    {
        var plain = Sample.PlainGround(records);
        var lean = Weight.FromPounds(20m);
        var given = Splitting.Split(lean, [], GrindAsk.OfRest(plain.Name, plain.Formulas.First().ToBlend()), ScaleDivision.HundredthPound);
        var split = new AgreedSplit(
            job.Id, lean, act.Now, act.Hand.Id,
            given.Allotments.Select((one, index) => new GrindAllotment(index + 1, plain.Id, plain.Formulas.First().Id, one)));
        records.AgreedSplits.Add(split);
        return split;
    }
}
