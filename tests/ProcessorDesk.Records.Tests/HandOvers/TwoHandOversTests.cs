using ProcessorDesk.Records.Tests.Kitchen;
using ProcessorDesk.Trade;
using Xunit;

namespace ProcessorDesk.Records.Tests.HandOvers;

/// <summary>Cuts and hot sausage in the first week, summer sausage weeks later. Every amount is worked with a pocket calculator.</summary>
public sealed class TwoHandOversTests(PickupShop shop) : IClassFixture<PickupShop>
{
    [Fact]
    public void Each_hand_over_is_invoiced_for_what_leaves_and_the_deposit_counts_once()
    {
        var job = shop.Job("Ada Ames");
        shop.MakeHot(job);
        int[] first = [shop.Box(job, PickupShop.Backstrap, 9.40m, packs: 6), shop.Box(job, PickupShop.Hot, 12.10m)];

        var one = shop.Invoice(job);
        Assert.Equal(["95.00", "30.25", "5.85"], Amounts(one)); // the deer; 12.10 lb × 2.50; fat 3.00 lb × 1.95
        Assert.Equal((131.10m, 1.89m, 132.99m), Sums(one));     // tax 30.25 × 0.0625 = 1.890625
        Assert.Equal(82.99m, Balance(job));                     // less the deposit of 50.00
        Assert.Contains("$82.99 is still owed", shop.TryHandOver(job, first).Text(), StringComparison.Ordinal);
        shop.Pay(job, 82.99m);
        var gone = shop.HandOver(job, first);
        Assert.Null(shop.JobOf(job).HandedOverAt);

        shop.File.Clock.Advance(TimeSpan.FromDays(17));
        shop.MakeSummer(job);
        var summer = shop.Box(job, PickupShop.Summer, 12.30m);
        shop.Finish(job);
        Assert.Equal("Not on an invoice yet: Summer sausage. Issue one first.", shop.TryHandOver(job, [summer]).Text());

        var two = shop.Invoice(job);
        Assert.Equal(["52.28", "5.36"], Amounts(two));          // 12.30 lb × 4.25 = 52.275; fat 2.75 lb × 1.95 = 5.3625
        Assert.Equal((57.64m, 3.27m, 60.91m), Sums(two));       // tax 52.28 × 0.0625 = 3.2675
        Assert.Equal(60.91m, Balance(job));
        shop.Pay(job, 60.91m);
        shop.HandOver(job, [summer], to: "Bea Ames");

        // As one invoice: 95.00 + 30.25 + 52.28 + 11.21 (5.75 lb × 1.95 = 11.2125) and tax 1.89 + 3.27.
        Assert.Equal(193.90m, Sums(one).Total + Sums(two).Total);
        Assert.Equal(95.00m + 30.25m + 52.28m + 11.21m + 1.89m + 3.27m, Sums(one).Total + Sums(two).Total);
        Assert.Equal(0m, Balance(job));
        var closed = shop.JobOf(job);
        Assert.Equal((JobStage.HandedOver, "Bea Ames", shop.File.Now), (closed.Stage, closed.HandedOverTo, closed.HandedOverAt));
        Assert.Equal(gone, shop.Read(records => records.Boxes.Where(box => first.Contains(box.Id)).Select(box => box.HandOverId).Distinct().Single()));
    }

    [Fact]
    public void The_second_invoice_begins_with_how_the_account_stood_and_shows_no_deposit()
    {
        var job = shop.Job("Bo Ames");
        shop.MakeHot(job);
        var first = shop.Box(job, PickupShop.Hot, 12.10m);
        var one = shop.Invoice(job);
        shop.Pay(job, 40.00m);
        shop.HandOver(job, [first], owing: true);
        shop.MakeSummer(job);
        var two = shop.Invoice(job);
        shop.Pay(job, 12.00m);

        var money = shop.Read(records => records.MoneyOf(job.Id));
        var (onFirst, onSecond) = (money.AccountOn(one), money.AccountOn(two));
        Assert.Null(onFirst.Before);
        Assert.Equal([("Deposit", 50.00m)], onFirst.Since.Select(paid => (paid.Words, paid.Amount.Dollars)));
        Assert.Equal(82.99m, onFirst.Balance.Dollars);                                       // 132.99 − 50.00
        Assert.Equal(one, onSecond.Before?.Id);
        Assert.Equal(82.99m, onSecond.Forward.Dollars);
        Assert.Equal([("Payment", 40.00m)], onSecond.Since.Select(paid => (paid.Words, paid.Amount.Dollars)));
        Assert.Equal(82.99m + 60.91m - 40.00m, onSecond.Balance.Dollars);                    // 103.90; the later 12.00 does not change it
        Assert.Equal(91.90m, money.Balance.Dollars);
    }

    [Fact]
    public void What_was_missing_is_said_as_it_was_however_late_it_is_asked()
    {
        var job = shop.Job("Cy Ames");
        shop.MakeHot(job);
        var (cuts, hot) = (shop.Box(job, PickupShop.Backstrap, 9.40m, packs: 6), shop.Box(job, PickupShop.Hot, 12.10m));
        Assert.Equal(
            ["Summer sausage: not begun", "Boxes 1, 2 (Backstrap, steaks, Hot sausage): still on Shelf 3"],
            shop.MissingAt(job, shop.File.Now));

        shop.Invoice(job);
        shop.HandOver(job, [cuts], owing: true);
        var first = shop.File.Now;
        string[] then = ["Summer sausage: not begun", "Box 2 (Hot sausage): still on Shelf 3"];
        Assert.Equal(then, shop.MissingAt(job, first));

        shop.File.Clock.Advance(TimeSpan.FromMinutes(1));
        var batch = shop.Mix(job, PickupShop.Summer, 1, 11.00m, 2.75m);
        var number = shop.Read(records => records.Batches.Single(one => one.Id == batch).Number);
        Assert.Contains($"Summer sausage: mixed in batch {number}", shop.MissingAt(job, shop.File.Now));
        shop.Kitchen.CookAndChill(batch);
        KitchenSteps.Expect(shop.Kitchen.Weigh(batch, null, 12.30m));
        KitchenSteps.Expect(shop.Kitchen.Release(batch));
        Assert.Contains("Summer sausage: made, not in a box yet", shop.MissingAt(job, shop.File.Now));
        var summer = shop.Box(job, PickupShop.Summer, 12.30m, place: "Shelf 9");
        Assert.Equal(["Box 2 (Hot sausage): still on Shelf 3", "Box 3 (Summer sausage): still on Shelf 9"], shop.MissingAt(job, shop.File.Now));
        shop.Invoice(job);
        shop.HandOver(job, [hot, summer], owing: true);
        Assert.Equal(["Perhaps more: boxing is not finished"], shop.MissingAt(job, shop.File.Now));
        shop.Finish(job);

        Assert.Empty(shop.MissingAt(job, shop.File.Now));
        Assert.Equal(then, shop.MissingAt(job, first));
    }

    private List<string> Amounts(int invoice) => shop.Read(records => records.InvoiceLines.Where(line => line.InvoiceId == invoice).OrderBy(line => line.Position)
        .Select(line => line.Amount).AsEnumerable().Select(amount => amount.Dollars.ToString("0.00", System.Globalization.CultureInfo.InvariantCulture)).ToList());

    private (decimal Net, decimal Tax, decimal Total) Sums(int invoice)
    {
        var found = shop.Read(records => records.Invoices.Single(one => one.Id == invoice));
        return (found.Net.Dollars, found.Tax.Dollars, found.Total.Dollars);
    }

    private decimal Balance(MadeJob job) => shop.Read(records => records.BalanceOf(job.Id)).Dollars;
}
