using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Grinding;
using ProcessorDesk.Trade.Tickets;

namespace ProcessorDesk.Browser.Tests.KitchenDay;

/// <summary>Brings the owners' deer from the door to their agreed splits, by the verbs the pages use; then holds one for its disease test.</summary>
internal static class DayCast
{
    private static readonly ScaleDivision _bench = ScaleDivision.HundredthPound;
    private static readonly Weight _tare = Weight.FromPounds(3.10m);

    public static void Bring(DayShop shop)
    {
        DayGoods.Stock(shop);
        shop.Do("buy lugs", shop.Manager, "Office", (records, act) =>
        {
            records.Lugs.AddRange(Enumerable.Range(1, DayOwners.All.Sum(owner => owner.Lugs.Length)).Select(number => new Lug(number, _tare, act.Now)));
            return Outcome.Done();
        });
        foreach (var owner in DayOwners.All)
            Bring(shop, owner);
        shop.Do("put an animal on hold", shop.Manager, "Office", (records, act) =>
        {
            records.Animals.Single(animal => animal.Shares.Any(share => share.Job.Owner.Name == DayOwners.Held)).PutOnHold(HoldReason.DiseaseTest, "Second look asked for", act.Now, act.Hand.Id);
            return Outcome.Done();
        });
    }

    /// <summary>What the scanner reads off each lug's ticket.</summary>
    public static IReadOnlyDictionary<int, string> TicketsOfLugs(DayShop shop) => shop.Read(records => records.Fillings
        .Join(records.Tickets.Where(ticket => ticket.Kind == TicketKind.Filling), filling => filling.Id, ticket => ticket.TargetId, (filling, ticket) => new { Lug = filling.Lug.Number, ticket.Number })
        .ToDictionary(one => one.Lug, one => TicketCode.FromNumber(one.Number).Print()));

    private static void Bring(DayShop shop, DayOwner owner)
    {
        var job = shop.Do("take in a job", shop.Manager, "Counter", (records, act) => records.TakeIn(DropOff(records, owner), new DateOnly(2026, 11, 27), act));
        shop.Do("start cutting", shop.Cutter, "Cutting", (records, act) => Told(records.Jobs.Single(one => one.Id == job).StartCutting(act.Now)));
        foreach (var net in owner.Lugs)
        {
            shop.Do("weigh at the table", shop.Cutter, "Cutting", (records, act) =>
            {
                var animals = records.Shares.Where(share => share.JobId == job).Select(share => share.AnimalId).ToList();
                var lug = records.Lugs.AsNoTracking().OrderBy(one => one.Number).First(one => !records.Fillings.Any(filling => filling.LugId == one.Id));
                return records.WeighAtTable(
                    new TableWeighing(job, WeighInKind.LeanTrim, lug.Id, animals, Weight.FromPounds(net) + _tare, _tare, new Reading("bench", _bench)), act);
            });
        }

        shop.Do("finish cutting", shop.Cutter, "Cutting", (records, act) => Told(records.Jobs.Single(one => one.Id == job).FinishCutting(act.Now)));
        shop.Do("agree the split", shop.Manager, "Grind", (records, act) => records.AgreeSplit(job, Weight.FromPounds(owner.Lean), act));
    }

    private static DropOff DropOff(RecordsContext records, DayOwner owner) => new(
        new TakenOwner(null, owner.Name, "555-0134", null, null, false),
        [],
        [new TakenAnimal(Species.WhiteTailDeer, ArrivalState.FieldDressed) { Tag = $"KD-{DayOwners.All.ToList().IndexOf(owner) + 1}" }],
        new TakenOrder(
            [],
            [
                .. owner.Asks.Select(ask => new PlannedAsk(
                    records.FormulaVersions.AsNoTracking().Newest().Single(formula => formula.Product.Name == ask.Product),
                    ask.Lean is null ? AskKind.Rest : AskKind.OwnLean, Weight.FromPounds(ask.Lean ?? 0m), Proportion.Zero)),
            ],
            new DateOnly(2026, 12, 11), owner.Pools ? Pooling.Pooled : Pooling.Own, PackWrap.Vacuum, owner.WantsNoPork, null),
        Money.Zero,
        PaymentMethod.Cash);

    private static Outcome Told(Finding? refusal) => refusal is null ? Outcome.Done() : Outcome.Refused(refusal);
}
