using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Web.Pages.Today;

/// <summary>What is in the shop: open jobs with their animals, what is wrong, what lies open in the kitchen. Five queries.</summary>
public sealed record TodayFacts(
    IReadOnlyList<TodayJob> Jobs, IReadOnlyList<TodayFacts.Trouble> Troubles, IReadOnlyList<OpenBatch> Batches, IReadOnlyList<WaitingAllotment> Waiting)
{
    /// <param name="midnight">When the shop's day began, UTC.</param>
    public static TodayFacts Read(RecordsContext records, DateTime midnight) =>
        new(TodayJob.Read(records), Wrong(records, midnight), records.OpenBatches(), records.WaitingAllotments());

    /// <summary>The first hold on an open job or on one of its animals; null where none stands.</summary>
    public Trouble? HoldOn(int jobId) => Jobs.FirstOrDefault(job => job.Id == jobId) is { } job
        ? Troubles.FirstOrDefault(one => one.Reason is not null && (one.JobId == jobId || job.Animals.Any(animal => animal.Id == one.AnimalId)))
        : null;

    /// <summary>Standing holds, and weights that were struck out today.</summary>
    private static List<Trouble> Wrong(RecordsContext records, DateTime midnight)
    {
        var holds = records.Holds.AsNoTracking().Standing().Select(hold => new
        {
            hold.AnimalId,
            hold.JobId,
            hold.BatchId,
            Reason = (HoldReason?)hold.Reason,
            Words = hold.Note,
            At = hold.PlacedAt,
            Tag = hold.Animal == null ? null : hold.Animal.Tag,
            Species = hold.Animal == null ? (Species?)null : hold.Animal.Species,
            Number = hold.Batch == null ? (int?)null : hold.Batch.Number,
            StopsKnife = records.HoldRules.Any(rule => rule.Reason == hold.Reason && rule.Act == HeldAct.Cut && rule.Stops),
            Strange = records.Draws.Where(draw => draw.Load.BatchId == hold.BatchId && draw.EntryId == null && draw.StruckAt == null).Select(draw => (int?)draw.Filling.JobId).FirstOrDefault(),
            Kind = (WeighInKind?)null,
            Milligrams = 0L,
        });
        var strikes =
            from strike in records.Strikes.AsNoTracking()
            join weighIn in records.WeighIns on strike.WeighInId equals weighIn.Id
            where strike.At >= midnight
            select new
            {
                weighIn.AnimalId,
                weighIn.JobId,
                weighIn.BatchId,
                Reason = (HoldReason?)null,
                Words = (string?)strike.Because,
                strike.At,
                Tag = weighIn.Animal == null ? null : weighIn.Animal.Tag,
                Species = weighIn.Animal == null ? (Species?)null : weighIn.Animal.Species,
                Number = weighIn.Batch == null ? (int?)null : weighIn.Batch.Number,
                StopsKnife = false,
                Strange = (int?)null,
                Kind = (WeighInKind?)weighIn.Kind,
                Milligrams = weighIn.Net.Milligrams,
            };
        return
        [
            .. holds.Concat(strikes).AsEnumerable().OrderBy(one => one.At).Select(one => new Trouble(
                one.AnimalId, one.JobId, one.BatchId, one.Reason, one.Words, one.At, one.Tag, one.Species, one.Number, one.StopsKnife, one.Strange, one.Kind, Weight.FromMilligrams(one.Milligrams)))
        ];
    }

    /// <param name="Reason">Of a hold; null for a struck weight.</param>
    /// <param name="StrangeJobId">Of a held batch: the job whose meat is in it and has no place there; null where all is planned.</param>
    /// <param name="Kind">Of a struck weight; null for a hold.</param>
    public sealed record Trouble(
        int? AnimalId, int? JobId, int? BatchId, HoldReason? Reason, string? Words, DateTime At, string? Tag, Species? Species, int? BatchNumber, bool StopsKnife,
        int? StrangeJobId, WeighInKind? Kind, Weight Net);
}
