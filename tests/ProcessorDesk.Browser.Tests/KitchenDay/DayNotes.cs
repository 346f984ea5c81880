using System.Globalization;
using ProcessorDesk.Records;

namespace ProcessorDesk.Browser.Tests.KitchenDay;

/// <summary>A batch of the day as it was planned.</summary>
/// <param name="Loads">Its loads' ids, in order.</param>
internal sealed record DayBatch(int Id, int Number, DayProduct Product, bool IsPooled, IReadOnlyList<string> Owners, IReadOnlyList<int> Loads)
{
    public static IReadOnlyList<DayBatch> All(RecordsContext records) =>
    [
        .. records.Batches.OrderBy(batch => batch.Number)
            .Select(batch => new
            {
                batch.Id,
                batch.Number,
                Product = batch.Product.Name,
                batch.Pooling,
                Owners = batch.Entries.Select(entry => entry.Job.Owner.Name).ToList(),
                Loads = batch.Loads.OrderBy(load => load.Number).Select(load => load.Id).ToList(),
            })
            .AsEnumerable()
            .Select(batch => new DayBatch(batch.Id, batch.Number, DayGoods.Find(batch.Product), batch.Pooling == Pooling.Pooled, batch.Owners, batch.Loads))
    ];
}

/// <summary>The hand's own notebook: everything that was weighed that day, in pounds and grams as it was typed. The shop's file is held against it.</summary>
internal sealed class DayNotes
{
    private const decimal GramsInPound = 453.59237m;

    public List<DrawNote> Draws { get; } = [];

    public List<MixNote> Mixes { get; } = [];

    public List<FinishedNote> Finished { get; } = [];

    /// <summary>Where a batch's weight went, as its page said it at the end.</summary>
    public Dictionary<int, IReadOnlyDictionary<string, string>> Balances { get; } = [];

    public decimal DrawnInto(int load) => Draws.Where(draw => draw.Load == load).Sum(draw => draw.Pounds);

    /// <summary>Lean, fat and ingredients of a load in pounds, to the division of the bench.</summary>
    public decimal MixedIn(int load) => DrawnInto(load) + Mixes.Where(mix => mix.Load == load).Sum(mix => mix.Fat + ToPounds(mix.Grams));

    public decimal MixedIn(DayBatch batch) => batch.Loads.Sum(DrawnInto) + Mixes.Where(mix => mix.Batch == batch.Id).Sum(mix => mix.Fat) + Ingredients(batch);

    /// <summary>All that is not meat, weighed on the small scale; as one sum, to the division of the bench.</summary>
    public decimal Ingredients(DayBatch batch) => ToPounds(Mixes.Where(mix => mix.Batch == batch.Id).Sum(mix => mix.Grams));

    /// <summary>4 oz to 100 lb is 1/400 of the block, rounded down to a tenth of a gram.</summary>
    public static decimal CureFor(decimal block) => Math.Floor(block * GramsInPound / 400m * 10m) / 10m;

    /// <summary>To the nearest tenth of a gram.</summary>
    public static decimal GramsFor(decimal block, decimal percent) => decimal.Round(block * GramsInPound * percent / 100m, 1, MidpointRounding.AwayFromZero);

    public static string Hundredths(decimal pounds) => pounds.ToString("0.00", CultureInfo.InvariantCulture);

    private static decimal ToPounds(decimal grams) => decimal.Round(grams / GramsInPound, 2, MidpointRounding.AwayFromZero);
}

/// <param name="Drip">What the lug lacked when it was empty.</param>
internal sealed record DrawNote(int Lug, string Owner, int Load, decimal Pounds, decimal Drip, bool Empties);

/// <param name="Cure">Grams of curing salt.</param>
/// <param name="Grams">Of all that is not meat, the cure among it.</param>
internal sealed record MixNote(int Batch, int Load, decimal Fat, decimal? Cure, decimal Grams);

/// <param name="Load">Null where all loads were weighed together.</param>
internal sealed record FinishedNote(int Batch, int? Load, decimal Pounds, int? Pieces, decimal Left);
