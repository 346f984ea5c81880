using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Tickets;

namespace ProcessorDesk.Records;

/// <summary>What every shop starts with: its settings row, its number series, the hold rules, plain ground and a price list.</summary>
public static class StartingShop
{
    /// <summary>Lays the built-in rows where the file has none yet.</summary>
    public static void Lay(RecordsContext records, Verbs verbs, string name, string timeZone, bool isDemo)
    {
        if (records.Shop.Any())
            return;
        verbs.Run("set up the shop", Hand.SetUp, null, act =>
        {
            records.Shop.Add(new ShopSettings(name, timeZone, isDemo));
            records.Counters.AddRange(
                new Counter(Numbers.Job, 1001), new Counter(Numbers.Invoice, 1), new Counter(Numbers.Batch, 1), new Counter(Numbers.Ticket, TicketCode.First.Number));
            records.HoldRules.AddRange(BuiltInHolds.Rules());
            var plain = new Product("Plain ground", ProcessKind.Fresh, cured: false, isPlainGround: true);
            plain.Reformulate(new FormulaVersion(
                act.Now, Proportion.Whole, null, false, (Proportion.Zero, Proportion.Zero, Proportion.Zero), Weight.Zero, Weight.Zero, []));
            records.Products.Add(plain);
            records.PriceLists.Add(new PriceList("Starting prices", DateOnly.FromDateTime(act.Now).AddDays(-1), []));
            return Outcome.Done();
        });
    }
}
