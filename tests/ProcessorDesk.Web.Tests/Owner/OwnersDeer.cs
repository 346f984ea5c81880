using System.Globalization;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Grinding;
using ProcessorDesk.Web.Door;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.OwnersPage;

/// <summary>
/// One deer, 128.5 lb field-dressed, 94.0 lb hanging, 20.00 lb of lean; hot sausage with 7.50 lb of own meat in it is asked for, the rest
/// becomes plain ground. Each step is done by the verb the shop's page would run.
/// </summary>
internal sealed class OwnersDeer
{
    public const string Name = "Wilhelmina Quist";
    public const string Phone = "555-0177";
    public const string Street = "77 Sedge Lane";
    public const string Collector = "Osric Plover";

    private readonly ShopUnderTest _shop;
    private readonly Hand _hand;

    public OwnersDeer(ShopUnderTest shop)
    {
        _shop = shop;
        if (!shop.Read(records => records.Products.Any(product => product.Name == "Hot sausage")))
            TrimmedJob.Prepare(shop);
        _hand = new Hand(shop.AddStaff("Barnaby Thrift", StaffRole.Manager), "Counter");
        Id = Do(TakeIn);
    }

    public int Id { get; }

    public string Link => Path(Number, shop => shop.Jobs.Single(job => job.Id == Id).LinkGeneration);

    private int Number => _shop.Read(records => records.Jobs.Single(job => job.Id == Id).Number);

    public void Hang() => Do((records, act) => records.Hang(AnimalIn(records), "4", WeighInKind.HotHanging, Weight.FromPounds(94m), null, act));

    public void Hold() => Do((records, act) =>
    {
        records.Animals.Single(animal => animal.Id == AnimalIn(records)).PutOnHold(HoldReason.DiseaseTest, "called Barnaby Thrift about it", act.Now, act.Hand.Id);
        return Outcome.Done(Id);
    });

    public void Release() => Do((records, act) =>
    {
        records.Holds.Single(hold => hold.Animal!.Shares.Any(share => share.JobId == Id)).Release(act.Now, act.Hand.Id, "result is there");
        return Outcome.Done(Id);
    });

    public void StartCutting() => Do((records, act) => Told(records.Jobs.Single(job => job.Id == Id).StartCutting(act.Now)));

    public void FinishCutting() => Do((records, act) =>
    {
        var filling = new Records.Filling(new Lug(records.Lugs.Count() + 1, Weight.FromPounds(3.10m), act.Now), Id, [AnimalIn(records)], act.Now);
        records.Fillings.Add(filling);
        records.WeighIns.Add(WeighIn.OfFilling(WeighInKind.LeanTrim, filling, Weight.FromPounds(23.10m), new Reading("Bench", ScaleDivision.HundredthPound), act.Now, act.Hand.Id));
        records.WeighIns.Add(WeighIn.OfJob(WeighInKind.Bone, Id, null, Weight.FromPounds(40m), Weight.Zero, new Reading("Bench", ScaleDivision.HundredthPound), act.Now, act.Hand.Id));
        return Told(records.Jobs.Single(job => job.Id == Id).FinishCutting(act.Now));
    });

    public void Agree() => Do((records, act) => records.AgreeSplit(Id, Weight.FromPounds(20m), act));

    /// <summary>Plans, draws and mixes a product in one load.</summary>
    public int Mix(string product, decimal lean, decimal fat, decimal seasoningGrams)
    {
        var batch = Do((records, act) => records.PlanBatch([Allotment(records, product)], act));
        Do((records, act) =>
        {
            var load = records.Loads.Single(one => one.BatchId == batch).Id;
            var filling = records.Fillings.Single(one => one.JobId == Id).Id;
            var drawn = records.DrawMeat(new DrawOrder(load, filling, Weight.FromPounds(lean), EmptiesLug: false), act);
            Assert.True(drawn.IsDone);
            return records.MixLoad(new MixOrder(load, Weight.FromPounds(fat), new Dictionary<int, (Weight, WeightUnit)> { [0] = (Weight.FromGrams(seasoningGrams), WeightUnit.Gram) }), false, act);
        });
        return batch;
    }

    public void Finish(int batch, decimal pounds)
    {
        Do((records, act) => records.WeighFinished(batch, null, Weight.FromPounds(pounds), Weight.Zero, act));
        Do((records, act) => records.ReleaseBatch(batch, null, act));
    }

    public void ThrowOut(int batch)
    {
        var today = new DateOnly(2026, 11, 27);
        Do((records, act) => records.WriteDisposition(batch, new DispositionOrder(DispositionKind.OwnersTold, null, "Barnaby Thrift", today, "called"), today, act));
        Do((records, act) => records.DiscardBatch(batch, "freezer door open; Barnaby Thrift called", act));
    }

    public int Box(string product, int packs, decimal net) => Do((records, act) =>
        records.PackBox(new BoxOrder(Id, [new PacksIn(Allotment(records, product), null, packs)], Weight.FromPounds(net + 0.5m), Weight.FromPounds(0.5m), "Shelf 3"), act));

    public void FinishBoxing() => Do((records, act) => records.FinishBoxing(Id, act));

    public void Invoice() => Do((records, act) => records.IssueInvoice(Id, new DateOnly(2026, 11, 27), new Dictionary<int, int>(), act));

    public void Pay(decimal dollars) => Do((records, act) => records.TakePayment(Id, Money.FromDollars(dollars), PaymentMethod.Check, "check of Osric Plover", act));

    public void HandOver(params int[] boxes) => Do((records, act) => records.HandOver(new HandOverOrder(
        Id, boxes, [.. records.Parts.Where(part => part.GivenAt == null && part.Animal.Shares.Any(share => share.JobId == Id)).Select(part => part.Id)], Collector, Owing: true), act));

    public void Renew() => Do((records, _) =>
    {
        records.Jobs.Single(job => job.Id == Id).RenewLink();
        return Outcome.Done(Id);
    });

    private string Path(int number, Func<RecordsContext, int> generation) =>
        "/Owner/" + _shop.Services.GetRequiredService<OwnerLinks>().Of(number, _shop.Read(generation));

    private Outcome TakeIn(RecordsContext records, Act act)
    {
        PlannedAsk Ask(string product, AskKind kind, decimal pounds) => new(
            records.FormulaVersions.AsNoTracking().Newest().Single(formula => formula.Product.Name == product), kind, Weight.FromPounds(pounds), Proportion.Zero);
        return records.TakeIn(
            new DropOff(
                new TakenOwner(null, Name, Phone, Street, null, false),
                [new JobPerson(PersonRole.Collector, Collector, "555-0178", null)],
                [new TakenAnimal(Species.WhiteTailDeer, ArrivalState.FieldDressed) { Tag = "WQ-1", ArrivalWeight = Weight.FromPounds(128.5m), Parts = [PartKind.Antlers] }],
                new TakenOrder([], [Ask("Hot sausage", AskKind.OwnLean, 7.5m)], new DateOnly(2026, 12, 11), Pooling.Own, PackWrap.Vacuum, false, "ask Barnaby Thrift"),
                Money.FromDollars(50m),
                PaymentMethod.Cash),
            new DateOnly(2026, 11, 27), act);
    }

    private int AnimalIn(RecordsContext records) => TrimmedJob.AnimalOf(records, Id).Id;

    private int Allotment(RecordsContext records, string product) => records.GrindAllotments
        .Single(one => one.Product.Name == product && records.AgreedSplits.Any(split => split.Id == one.AgreedSplitId && split.JobId == Id && split.WithdrawnAt == null)).Id;

    private static Outcome Told(Finding? refusal) => refusal is null ? Outcome.Done() : Outcome.Refused(refusal);

    private int Do(Func<RecordsContext, Act, Outcome> work)
    {
        var outcome = _shop.Write(work, _hand);
        Assert.True(outcome.IsDone, string.Join(' ', outcome.Findings.Select(finding => finding.Text)));
        return outcome.Result == "" ? 0 : int.Parse(outcome.Result, CultureInfo.InvariantCulture);
    }
}
