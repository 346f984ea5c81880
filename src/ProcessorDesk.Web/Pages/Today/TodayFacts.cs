using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Web.Pages.Today;

/// <summary>What is in the shop: open jobs, their animals, standing holds. Three queries.</summary>
public sealed record TodayFacts(IReadOnlyList<TodayFacts.OpenJob> Jobs, IReadOnlyList<TodayFacts.Owned> Shares, IReadOnlyList<TodayFacts.Held> Holds)
{
    public static TodayFacts Read(RecordsContext records) => new(
        records.Jobs.AsNoTracking()
            .Where(job => job.HandedOverAt == null)
            .OrderBy(job => job.PromisedFor == null).ThenBy(job => job.PromisedFor).ThenBy(job => job.Number)
            .Select(job => new OpenJob(
                job.Id, job.Number, job.Owner.Name, job.Owner.Phone, job.TakenAt, job.PromisedFor,
                Job.StageOf(job.DetailsComplete, job.CuttingStartedAt, job.CuttingDoneAt, job.SplitAgreedAt, job.MadeAt, job.BoxedAt, job.HandedOverAt),
                job.DetailsComplete,
                records.Invoices.Any(invoice => invoice.JobId == job.Id && invoice.CreditsInvoiceId == null
                    && !records.Invoices.Any(credit => credit.CreditsInvoiceId == invoice.Id)),
                records.Invoices.Where(invoice => invoice.JobId == job.Id).Sum(invoice => invoice.Total.Cents)
                    - records.Payments.Where(payment => payment.JobId == job.Id).Sum(payment => payment.Amount.Cents)))
            .ToList(),
        records.Shares.AsNoTracking()
            .Where(share => share.Animal.Shares.Any(one => one.Job.HandedOverAt == null))
            .OrderBy(share => share.AnimalId)
            .Select(share => new Owned(
                share.JobId, share.AnimalId, Ratio.Of(share.Numerator, share.Denominator), share.Animal.Species, share.Animal.Tag, share.Animal.ArrivalState,
                share.Animal.SurfaceTemperature,
                records.WeighIns.Any(weighed => weighed.AnimalId == share.AnimalId && weighed.Kind == WeighInKind.ChilledHanging && weighed.Strike == null),
                share.Animal.ArrivedAt, share.Animal.HungAt))
            .ToList(),
        records.Holds.AsNoTracking().Standing()
            .OrderBy(hold => hold.PlacedAt)
            .Select(hold => new Held(
                hold.AnimalId, hold.JobId, hold.Reason, hold.Note, hold.PlacedAt,
                hold.Animal == null ? null : hold.Animal.Tag,
                hold.Animal == null ? (Species?)null : hold.Animal.Species,
                records.HoldRules.Any(rule => rule.Reason == hold.Reason && rule.Act == HeldAct.Cut && rule.Stops)))
            .ToList());

    public sealed record OpenJob(
        int Id, int Number, string Owner, string Phone, DateTime TakenAt, DateOnly? Promised, JobStage Stage, bool DetailsComplete, bool IsInvoiced, long BalanceCents);

    public sealed record Owned(
        int JobId, int AnimalId, Ratio Fraction, Species Species, string? Tag, ArrivalState State, Temperature? Surface, bool WeighedCold, DateTime ArrivedAt, DateTime? HungAt);

    public sealed record Held(
        int? AnimalId, int? JobId, HoldReason Reason, string? Note, DateTime At, string? Tag, Species? Species, bool StopsKnife);
}
