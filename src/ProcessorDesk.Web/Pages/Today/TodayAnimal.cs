using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Web.Pages.Today;

/// <summary>An animal of an open job.</summary>
/// <param name="IsWhollyShared">Its owners' shares come to one.</param>
public sealed record TodayAnimal(
    int Id, Species Species, string? Tag, ArrivalState State, Temperature? Surface, bool WeighedCold, DateTime ArrivedAt, DateTime? HungAt, bool IsWhollyShared)
{
    /// <summary>By the job; one query.</summary>
    internal static ILookup<int, TodayAnimal> Read(RecordsContext records) =>
        (from job in records.Jobs.AsNoTracking()
         where job.HandedOverAt == null
         join share in records.Shares on job.Id equals share.JobId
         join other in records.Shares on share.AnimalId equals other.AnimalId
         orderby share.AnimalId
         select new
         {
             share.JobId,
             share.Animal,
             WeighedCold = records.WeighIns.Any(one => one.AnimalId == share.AnimalId && one.Kind == WeighInKind.ChilledHanging && one.Strike == null),
             other.Numerator,
             other.Denominator,
         })
        .AsEnumerable()
        .GroupBy(row => (row.JobId, row.Animal.Id))
        .Select(rows => (rows.Key.JobId, First: rows.First(), Sum: rows.Aggregate(Ratio.Zero, (sum, row) => sum + Ratio.Of(row.Numerator, row.Denominator))))
        .ToLookup(one => one.JobId, one => new TodayAnimal(
            one.First.Animal.Id, one.First.Animal.Species, one.First.Animal.Tag, one.First.Animal.ArrivalState, one.First.Animal.SurfaceTemperature, one.First.WeighedCold,
            one.First.Animal.ArrivedAt, one.First.Animal.HungAt, one.Sum == Ratio.One));
}
