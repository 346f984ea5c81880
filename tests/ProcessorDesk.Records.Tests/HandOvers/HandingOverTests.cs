using ProcessorDesk.Records.Tests.Kitchen;
using ProcessorDesk.Trade;
using Xunit;

namespace ProcessorDesk.Records.Tests.HandOvers;

/// <summary>What keeps meat from leaving.</summary>
public sealed class HandingOverTests(PickupShop shop) : IClassFixture<PickupShop>
{
    [Fact]
    public void Something_is_ticked_and_somebody_takes_it()
    {
        var (job, _) = Boxed("Dan Bell");

        Assert.Equal("Tick or scan what goes out.", shop.TryHandOver(job, [], owing: true).Text());
        Assert.Equal(["Boxes", "To"], shop.TryHandOver(job, [], to: " ", owing: true).Findings.Select(finding => finding.Field));
    }

    [Fact]
    public void A_box_of_another_job_does_not_go_along()
    {
        var (job, box) = Boxed("Eve Bell");
        var (_, other) = Boxed("Fay Bell");

        Assert.Contains("another job's", shop.TryHandOver(job, [box, other], owing: true).Text(), StringComparison.Ordinal);
        Assert.Null(shop.Read(records => records.Boxes.Single(one => one.Id == other).HandOverId));
    }

    [Fact]
    public void A_box_leaves_once()
    {
        var (job, box) = Boxed("Gil Bell");
        shop.HandOver(job, [box], owing: true);

        Assert.Contains("left meanwhile", shop.TryHandOver(job, [box], owing: true).Text(), StringComparison.Ordinal);
        Assert.Contains("was handed over", shop.Try((records, act) => records.MoveBox(box, "Shelf 1", act)).Text(), StringComparison.Ordinal);
        Assert.Contains("was handed over", shop.Try((records, act) => records.UnpackBox(box, "wrong", act)).Text(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(HoldReason.DiseaseDetected, "disease detected")]
    [InlineData(HoldReason.Dispute, "in dispute")]
    public void A_hold_on_the_animal_stops_it(HoldReason reason, string words)
    {
        var (job, box) = Boxed($"Held for {reason}");
        shop.File.Do((records, act) => records.Animals.Single(animal => animal.Id == job.AnimalId).PutOnHold(reason, null, act.Now, act.Hand.Id));

        Assert.Contains($"on hold: {words}", shop.TryHandOver(job, [box], owing: true).Text(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_hold_on_the_batch_stops_the_boxes_with_it_and_no_others()
    {
        var job = shop.Job("Ida Bell");
        var batch = shop.MakeHot(job);
        var (cuts, hot) = (shop.Box(job, PickupShop.Backstrap, 9.40m), shop.Box(job, PickupShop.Hot, 12.10m));
        shop.Invoice(job);
        shop.Must((records, act) => records.HoldBatch(batch, HoldReason.RecordIncomplete, "the chart is of another day", act));

        Assert.Contains("is on hold: record incomplete", shop.TryHandOver(job, [cuts, hot], owing: true).Text(), StringComparison.Ordinal);
        Assert.True(shop.TryHandOver(job, [cuts], owing: true).IsDone);
    }

    [Fact]
    public void Money_owed_is_said_and_may_be_let_go()
    {
        var (job, box) = Boxed("Jan Bell");

        var refused = shop.TryHandOver(job, [box]);
        Assert.Equal(("Owing", "$82.99 is still owed. Take the payment, or tick that it goes out owing."), (refused.Findings.Single().Field, refused.Findings.Single().Text));
        var gone = shop.HandOver(job, [box], owing: true);

        Assert.True(shop.Read(records => records.HandOvers.Single(one => one.Id == gone).Owing));
    }

    [Fact]
    public void Nothing_leaves_before_the_work_on_the_animal_is_invoiced()
    {
        var job = shop.Job("Kai Bell");
        shop.MakeHot(job);
        var box = shop.Box(job, PickupShop.Backstrap, 9.40m);

        Assert.Equal("Not on an invoice yet: White-tail deer, tag K Kai Bell. Issue one first.", shop.TryHandOver(job, [box]).Text());
    }

    [Fact]
    public void What_no_price_list_has_holds_nothing_up()
    {
        var job = shop.Job("Lea Bell");
        var elk = shop.File.Do((records, act) =>
        {
            var animal = records.Animals.Single(one => one.Id == job.AnimalId);
            animal.Describe(Species.Elk, Sex.Unknown, ArrivalState.FieldDressed, null, null, null);
            return animal.Id;
        });
        var box = shop.Box(job, PickupShop.Backstrap, 9.40m);

        Assert.Contains("no prices for this job", shop.Try((records, act) => records.IssueInvoice(job.Id, new DateOnly(2026, 11, 25), new Dictionary<int, int>(), act)).Text(), StringComparison.Ordinal);
        Assert.True(shop.TryHandOver(job, [box]).IsDone);
        Assert.NotEqual(0, elk);
    }

    [Fact]
    public void A_credited_invoice_keeps_its_goods_here_until_it_is_issued_again()
    {
        var (job, box) = Boxed("Mia Bell");
        var invoice = shop.Read(records => records.Invoices.Single(one => one.JobId == job.Id).Id);
        shop.Must((records, act) => records.CreditInvoice(invoice, act));

        Assert.Equal("Not on an invoice yet: White-tail deer, tag K Mia Bell, Hot sausage. Issue one first.", shop.TryHandOver(job, [box]).Text());
        shop.Invoice(job);
        Assert.True(shop.TryHandOver(job, [box], owing: true).IsDone);
    }

    [Fact]
    public void An_invoice_whose_goods_left_is_credited_and_issued_again_to_the_same_cent()
    {
        var (job, box) = Boxed("Ned Bell");
        shop.HandOver(job, [box], owing: true);
        var first = shop.Read(records => records.Invoices.Single(one => one.JobId == job.Id));

        shop.Must((records, act) => records.CreditInvoice(first.Id, act));
        Assert.Equal(-50.00m, shop.Read(records => records.BalanceOf(job.Id)).Dollars);
        var again = shop.Invoice(job);

        var money = shop.Read(records => records.MoneyOf(job.Id));
        Assert.Equal([132.99m, -132.99m, 132.99m], money.Bills.Select(bill => bill.Total.Dollars));
        Assert.Equal([again], money.Standing.Select(bill => bill.Id));
        Assert.Equal(82.99m, money.AccountOn(again).Balance.Dollars);
        Assert.Equal(["Deposit"], money.AccountOn(again).Since.Select(paid => paid.Words));
        Assert.Contains("credited before", shop.Try((records, act) => records.CreditInvoice(first.Id, act)).Text(), StringComparison.Ordinal);
    }

    /// <summary>A job whose hot sausage is boxed and invoiced with $82.99 owed.</summary>
    private (MadeJob Job, int Box) Boxed(string owner)
    {
        var job = shop.Job(owner);
        shop.MakeHot(job);
        var box = shop.Box(job, PickupShop.Hot, 12.10m);
        shop.Invoice(job);
        return (job, box);
    }
}
