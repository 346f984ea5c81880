using System.Globalization;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Grinding;

namespace ProcessorDesk.SeedDemo;

/// <summary>One job of the season, told as its way through the shop. Each step is put down with its time and played in order.</summary>
internal sealed class DemoJob(Season season, TakenOwner owner)
{
    private static readonly ScaleDivision s_bench = ScaleDivision.HundredthPound;
    private int _jobId;

    private RecordsContext Records => season.Records;

    public int Id => _jobId;

    public DemoJob TakeIn(
        int daysAgo, int hour, int minute, IReadOnlyList<TakenAnimal> animals, string style, IReadOnlyList<(string Product, AskKind Kind, decimal Amount)> asks,
        int promisedInDays, bool noPork = false, decimal deposit = 50m, bool whole = true, Pooling pooling = Pooling.Own, string? notes = null) =>
        Do(daysAgo, hour, minute, "take in a job", "IP", "Counter", act =>
        {
            var order = new TakenOrder(Cuts(style), [.. asks.Select(Ask)], season.Day(-promisedInDays), pooling, PackWrap.Vacuum, noPork, notes);
            var outcome = Records.TakeIn(
                new DropOff(owner, [], animals, whole ? order : null, Money.FromDollars(deposit), PaymentMethod.Cash, whole), season.Day(daysAgo), act);
            _jobId = Number(outcome);
            return outcome;
        });

    /// <summary>Another owner's share of this job's one animal, with an order of its own; answers that owner's job.</summary>
    public DemoJob ShareWith(
        int daysAgo, int hour, int minute, TakenOwner other, (Ratio Own, Ratio Other) fractions, string style, IReadOnlyList<(string Product, AskKind Kind, decimal Amount)> asks, DemoJob? third = null)
    {
        var job = new DemoJob(season, other);
        Do(daysAgo, hour, minute, "divide an animal", "DM", "Counter", act =>
        {
            var animal = Records.Animals.AsNoTracking().Include(one => one.Shares).Single(one => one.Shares.Any(share => share.JobId == _jobId));
            List<(int, Ratio)> kept = [(_jobId, fractions.Own)];
            if (third is not null)
                kept.Add((third._jobId, animal.Shares.Single(share => share.JobId == third._jobId).Fraction));
            var outcome = Records.ShareOut(animal.Id, animal.Version, kept, (other, fractions.Other), season.Day(daysAgo), act);
            if (outcome.IsDone)
                job._jobId = Number(outcome);
            return outcome;
        });
        job.Do(daysAgo, hour, minute + 4, "change an order", "DM", "Counter", _ =>
        {
            var found = Records.Jobs.Include(one => one.CutOrder).Include(one => one.Asks).AsSplitQuery().Single(one => one.Id == job._jobId);
            new TakenOrder(Cuts(style), [.. asks.Select(Ask)], season.Day(-12), Pooling.Own, PackWrap.FreezerPaper, false, null).WriteOn(found);
            found.CompleteDetails();
            return Outcome.Done(found.Id);
        });
        return job;
    }

    public DemoJob Hang(int daysAgo, int hour, int minute, string rail, params decimal[] hot) => Hang(daysAgo, hour, minute, rail, WeighInKind.HotHanging, hot);

    public DemoJob Chilled(int daysAgo, int hour, int minute, string rail, params decimal[] chilled) => Hang(daysAgo, hour, minute, rail, WeighInKind.ChilledHanging, chilled);

    public DemoJob StartCutting(int daysAgo, int hour, int minute) => Do(daysAgo, hour, minute, "start cutting", "OT", "Cutting", act =>
        Records.StoppingKnife(_jobId) is { Count: > 0 } stopping ? Outcome.Refused(stopping) : Told(Job().StartCutting(act.Now)));

    /// <summary>A full lug of lean; its animal by place, both where the place is null.</summary>
    public DemoJob Lean(int daysAgo, int hour, int minute, int lug, decimal gross, int? animal = null) => Do(daysAgo, hour, minute, "weigh at the table", "OT", "Cutting", act =>
    {
        var animals = Animals();
        var found = Records.Lugs.AsNoTracking().Single(one => one.Number == lug);
        return Records.WeighAtTable(
            new TableWeighing(_jobId, WeighInKind.LeanTrim, found.Id, animal is { } place ? [animals[place]] : animals, Weight.FromPounds(gross), found.Tare, new Reading("bench", s_bench)), act);
    });

    public DemoJob Loose(int daysAgo, int hour, int minute, WeighInKind kind, decimal pounds, string? note = null, int? packs = null) =>
        Do(daysAgo, hour, minute, "weigh at the table", "FA", "Cutting", act => Records.WeighAtTable(
            new TableWeighing(_jobId, kind, null, Animals() is [var only] ? [only] : [], Weight.FromPounds(pounds), Weight.Zero, new Reading("bench", s_bench, note, packs)), act));

    public DemoJob StrikeLast(int daysAgo, int hour, int minute, string because) => Do(daysAgo, hour, minute, "strike out a weight", "OT", "Cutting", act =>
        Told(Records.WeighIns.Include(one => one.Strike).Where(one => one.JobId == _jobId).OrderBy(one => one.Id).Last().StrikeOut(because, act.Now, act.Hand.Id)));

    public DemoJob FinishCutting(int daysAgo, int hour, int minute) =>
        Do(daysAgo, hour, minute, "finish cutting", "OT", "Cutting", act => Told(Job().FinishCutting(act.Now)));

    /// <summary>The meat went on: every lug of the job is free again.</summary>
    public DemoJob EmptyLugs(int daysAgo, int hour, int minute) => Do(daysAgo, hour, minute, "empty a lug", "BQ", "Cutting", act =>
    {
        foreach (var filling in Records.Fillings.Open().Where(one => one.JobId == _jobId).ToList())
            filling.Empty(act.Now);
        return Outcome.Done(_jobId);
    });

    public DemoJob Agree(int daysAgo, int hour, int minute) =>
        Do(daysAgo, hour, minute, "agree the split", "FA", "Grind", act => Records.AgreeSplit(_jobId, Records.LeanOf(_jobId, s_bench), act));

    public DemoJob Invoice(int daysAgo, int hour, int minute) =>
        Do(daysAgo, hour, minute, "issue an invoice", "DM", "Pickup", act => Records.IssueInvoice(_jobId, season.Day(daysAgo), new Dictionary<int, int>(), act));

    public DemoJob Credit(int daysAgo, int hour, int minute) => Do(daysAgo, hour, minute, "credit an invoice", "NH", "Pickup", act =>
        Records.CreditInvoice(Records.Invoices.Standing().Where(one => one.JobId == _jobId).Select(one => one.Id).Single(), act));

    /// <summary>Every product of the job in a batch of its own, mixed, weighed and released, with the loss the formula expects.</summary>
    public DemoJob MakeAll(int daysAgo, int hour, int minute) => Do(daysAgo, hour, minute, "make a product", "BQ", "Kitchen", act =>
    {
        foreach (var product in Records.MadeOf(_jobId))
        {
            var batch = Records.PlanBatch([product.AllotmentId], act);
            if (!batch.IsDone)
                return batch;
            var id = Number(batch);
            var kitchen = new DemoKitchen(Records);
            foreach (var work in (Func<Outcome>[])[
                () => kitchen.DrawAll(id, act),
                () => kitchen.MixAll(id, act),
                () => Records.WeighFinished(id, null, product.Expected, Weight.Zero, act),
                () => Records.ReleaseBatch(id, null, act)])
            {
                if (work() is { IsDone: false } refused)
                    return refused;
                Records.SaveChanges();
            }
        }

        return Outcome.Done(_jobId);
    });

    /// <summary>A box for each product, one for the cuts, and the word that this is all.</summary>
    public DemoJob BoxAll(int daysAgo, int hour, int minute, string place) => Do(daysAgo, hour, minute, "pack a box", "FA", "Freezer", act =>
    {
        var cuts = Records.WeightsOf(_jobId, s_bench).Cuts;
        List<(int?, Weight)> kinds = [.. Records.MadeOf(_jobId).Select(product => ((int?)product.AllotmentId, product.Finished!.Value))];
        if (cuts.IsPositive)
            kinds.Add((null, cuts));
        foreach (var (allotment, weight) in kinds)
        {
            var packs = Math.Max(1, (int)weight.Pounds);
            if (Records.PackBox(new BoxOrder(_jobId, [(allotment, packs)], weight + Weight.FromPounds(0.8m), Weight.FromPounds(0.8m), place), act) is { IsDone: false } refused)
                return refused;
        }

        Records.SaveChanges();
        return Records.FinishBoxing(_jobId, act);
    });

    /// <summary>What is owed is paid, and all of it is handed over.</summary>
    public DemoJob PayAndHandOver(int daysAgo, int hour, int minute) =>
        Do(daysAgo, hour, minute, "take a payment", "IP", "Pickup", act => Records.TakePayment(_jobId, Records.BalanceOf(_jobId), PaymentMethod.Card, null, act))
            .Do(daysAgo, hour, minute + 2, "hand over", "IP", "Pickup", act => Records.HandOver(
                new HandOverOrder(_jobId, [.. Records.Boxes.Here().Where(box => box.JobId == _jobId).Select(box => box.Id)], [], owner.Name, Owing: false), act));

    public DemoJob GivePart(int daysAgo, int hour, int minute, PartKind kind, string to) => Do(daysAgo, hour, minute, "give a part back", "IP", "Pickup", act =>
        Records.GivePart(Records.Parts.Where(part => part.Kind == kind && part.Animal.Shares.Any(share => share.JobId == _jobId)).Select(part => part.Id).Single(), to, act));

    private DemoJob Hang(int daysAgo, int hour, int minute, string rail, WeighInKind kind, decimal[] pounds)
    {
        for (var i = 0; i < pounds.Length; i++)
        {
            var place = i;
            Do(daysAgo, hour, minute + i, "hang a carcass", "OT", "Cooler", act =>
                Records.Hang(Animals()[place], rail, kind, Weight.FromPounds(pounds[place]), null, act));
        }

        return this;
    }

    private DemoJob Do(int daysAgo, int hour, int minute, string verb, string initials, string station, Func<Act, Outcome> work)
    {
        season.Do(season.At(daysAgo, hour, minute), verb, () => DemoStaff.At(Records, initials, station), work);
        return this;
    }

    private Job Job() => Records.Jobs.Single(job => job.Id == _jobId);

    private List<int> Animals() =>
        [.. Records.Shares.Where(share => share.JobId == _jobId).OrderBy(share => share.AnimalId).Select(share => share.AnimalId)];

    private PlannedAsk Ask((string Product, AskKind Kind, decimal Amount) ask) => new(
        Records.FormulaVersions.AsNoTracking().Newest().Single(formula => formula.Product.Name == ask.Product),
        ask.Kind,
        ask.Kind is AskKind.OwnLean or AskKind.Finished ? Weight.FromPounds(ask.Amount) : Weight.Zero,
        ask.Kind == AskKind.Percent ? Proportion.FromPercent(ask.Amount) : Proportion.Zero);

    private static List<CutOrderLine> Cuts(string style) =>
        [.. CutMenu.Groups.Select((group, i) => new CutOrderLine(i, group.Code, CutMenu.Styles.Single(one => one.Code == style).CutFor(group.Code), null, null))];

    private static int Number(Outcome outcome) => outcome.IsDone ? int.Parse(outcome.Result, CultureInfo.InvariantCulture) : 0;

    private static Outcome Told(Finding? refusal) => refusal is null ? Outcome.Done() : Outcome.Refused(refusal);
}
