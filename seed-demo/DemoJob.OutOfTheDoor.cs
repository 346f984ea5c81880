using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;

namespace ProcessorDesk.SeedDemo;

/// <summary>From the kitchen's release to the truck.</summary>
internal sealed partial class DemoJob
{
    /// <summary>What is packed at the table, as a box's contents are named in a story.</summary>
    public const string CutsName = "Cuts";

    private static readonly Weight s_boxTare = Weight.FromPounds(0.8m);
    private static readonly Weight s_fullBox = Weight.FromPounds(30m);

    /// <summary>Every product in a batch of its own, begun on one day; what is smoked or cooked is released two days later.</summary>
    public DemoJob Made(int daysAgo, params string[] products)
    {
        foreach (var product in products)
            new DemoBatch(season, product, this).Make(daysAgo);
        return this;
    }

    /// <summary>Boxes of some things of the job, none heavier than a hand carries.</summary>
    public DemoJob Box(int daysAgo, int hour, int minute, string place, params string[] names) => Do(daysAgo, hour, minute, "pack a box", "FA", "Freezer", act =>
    {
        foreach (var (packs, weight) in Made().Where(one => names.Contains(one.Name)).Select(one => (one.Packs, one.Weight)))
        {
            var boxes = (int)(s_bench.CountOf(weight) / s_bench.CountOf(s_fullBox)) + 1;
            var weights = s_bench.Split(weight, [.. Enumerable.Repeat(1L, boxes)]);
            for (var i = 0; i < boxes; i++)
            {
                PacksIn[] contents = [.. packs.Select(kind => kind with { Packs = (kind.Packs * (i + 1) / boxes) - (kind.Packs * i / boxes) })];
                if (Records.PackBox(new BoxOrder(_jobId, contents, weights[i] + s_boxTare, s_boxTare, place), act) is { IsDone: false } refused)
                    return refused;
            }
        }

        return Outcome.Done(_jobId);
    });

    /// <summary>Everything in boxes, and the word that this is all.</summary>
    public DemoJob BoxAll(int daysAgo, int hour, int minute, string place, params string[] names) => Box(daysAgo, hour, minute, place, names)
        .Do(daysAgo, hour, minute + 10, "finish boxing", "FA", "Freezer", act => Records.FinishBoxing(_jobId, act));

    public DemoJob Invoice(int daysAgo, int hour, int minute) =>
        Do(daysAgo, hour, minute, "issue an invoice", "DM", "Pickup", act => Records.IssueInvoice(_jobId, season.Day(daysAgo), new Dictionary<int, int>(), act));

    public DemoJob Credit(int daysAgo, int hour, int minute) => Do(daysAgo, hour, minute, "credit an invoice", "NH", "Pickup", act =>
        Records.CreditInvoice(Records.Invoices.Standing().Where(one => one.JobId == _jobId).Select(one => one.Id).Single(), act));

    /// <summary>Pays what is owed.</summary>
    public DemoJob Pay(int daysAgo, int hour, int minute, PaymentMethod method = PaymentMethod.Card) => Do(daysAgo, hour, minute, "take a payment", "IP", "Pickup", act =>
        Records.TakePayment(_jobId, Records.BalanceOf(_jobId), method, null, act));

    /// <summary>Everything of the job that is here, or only its boxes.</summary>
    public DemoJob HandOver(int daysAgo, int hour, int minute, bool parts = true) => Do(daysAgo, hour, minute, "hand over", "IP", "Pickup", act => Records.HandOver(
        new HandOverOrder(
            _jobId,
            [.. Records.Boxes.Here().Where(box => box.JobId == _jobId).Select(box => box.Id)],
            [.. Records.PartsOf(_jobId).Where(part => parts && part.GivenAt == null).Select(part => part.Id)],
            owner.Name,
            Owing: false),
        act));

    public DemoJob PayAndHandOver(int daysAgo, int hour, int minute, bool parts = true) => Pay(daysAgo, hour, minute).HandOver(daysAgo, hour, minute + 2, parts);

    public DemoJob GivePart(int daysAgo, int hour, int minute, PartKind kind, string to) => Do(daysAgo, hour, minute, "give a part back", "IP", "Pickup", act =>
        Records.GivePart(Records.PartsOf(_jobId).Where(part => part.Kind == kind).Select(part => part.Id).Single(), to, act));

    /// <summary>What can be boxed: each product that is released, in packs of about a pound, and the cuts as they were packed at the table.</summary>
    private List<(string Name, PacksIn[] Packs, Weight Weight)> Made()
    {
        var cuts = Records.WeighIns.AsNoTracking().Standing().Where(one => one.JobId == _jobId && one.Kind == WeighInKind.CutPack).OrderBy(one => one.Id).ToList();
        return
        [
            .. Records.MadeOf(_jobId).Where(product => product.Finished is not null)
                .Select(product => (product.Name, (PacksIn[])[new PacksIn(product.AllotmentId, null, Math.Max(1, (int)product.Finished!.Value.Pounds))], product.Finished!.Value)),
            (CutsName, [.. cuts.Select(one => new PacksIn(null, one.Note, one.Packs ?? 1))], s_bench.Sum(cuts.Select(one => one.Net))),
        ];
    }
}
