using ProcessorDesk.Records;
using ProcessorDesk.Trade.Kitchen;

namespace ProcessorDesk.Seasons.Tests.Generating;

/// <summary>What was agreed becomes batches on the next morning: each product of an owner alone, or of several who agreed to pooling.</summary>
internal sealed class InTheKitchen(Season season)
{
    private const int MostInPool = 5;

    private readonly Dictionary<(DateTime Morning, FormulaVersion Formula), List<ProductInHand>> _pools = [];

    public void Expect(JobInHand job)
    {
        var morning = InTheCooler.Morning(season.Now, 1);
        foreach (var product in job.Products)
        {
            if (job.Job.Pooling == Pooling.Own)
                Plan(morning, () => [product]);
            else if (_pools.TryGetValue((morning, product.Formula), out var pool) && pool.Count < MostInPool)
                pool.Add(product);
            else
                StartPool(morning, product);
        }
    }

    private void StartPool(DateTime morning, ProductInHand product)
    {
        List<ProductInHand> pool = [product];
        _pools[(morning, product.Formula)] = pool;
        Plan(morning, () =>
        {
            _pools.Remove((morning, product.Formula));
            return pool;
        });
    }

    private void Plan(DateTime morning, Func<IReadOnlyList<ProductInHand>> products) =>
        season.Plan(morning + season.Dice.Minutes(0, 90), "plan a batch", StaffRole.Kitchen, "Kitchen", () => PlanBatch(products()));

    private void PlanBatch(IReadOnlyList<ProductInHand> products)
    {
        var shop = season.Floor.Settings;
        var pooling = products.Select(product => product.Job.Owner).Distinct().Count() > 1 ? Pooling.Pooled : Pooling.Own;
        var batch = new Batch(season.TakeBatchNumber(), products[0].Formula, pooling, season.Now, season.Hand.Id);
        season.Add(batch);
        var entries = products.Select(product => new BatchEntry(product.Allotment.Id, product.Job.Job.Id)).ToList();
        foreach (var entry in entries)
            season.Add(entry, batch);
        var parts = products.Select(product => new BatchPart(product.Allotment.Lean, product.Allotment.AddedFat, product.Allotment.Green)).ToList();
        var loads = MixerLoads.Plan(parts, shop.MixerCapacity, shop.BenchDivision).Select((load, i) => new Load(i + 1, load, entries)).ToList();
        foreach (var load in loads)
        {
            season.Add(load, batch);
            foreach (var part in load.Parts)
                season.Add(part, load);
        }

        season.AddTicket(TicketKind.Batch, batch.Id);
        new BatchInHand(season, batch, loads, [.. entries.Zip(products)]).Expect();
    }
}
