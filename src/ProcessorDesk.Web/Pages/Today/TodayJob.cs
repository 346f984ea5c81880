using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Formulas;
using ProcessorDesk.Trade.Grinding;

namespace ProcessorDesk.Web.Pages.Today;

/// <summary>A job that is in the shop, as the day's work asks of it.</summary>
/// <param name="Lean">Weighed until now.</param>
/// <param name="Asks">At the newest formulas.</param>
/// <param name="BoxesHere">Boxes that have not left.</param>
/// <param name="HasLeftInPart">Something of it was handed over.</param>
public sealed record TodayJob(
    int Id, int Number, string Owner, string Phone, DateTime TakenAt, DateOnly? Promised, JobStage Stage, bool DetailsComplete, DateTime? BoxedAt, Weight Lean,
    bool IsInvoiced, Money Balance, int BoxesHere, bool HasLeftInPart, IReadOnlyList<TodayAnimal> Animals, IReadOnlyList<GrindAsk> Asks)
{
    /// <summary>What was asked and the trim does not bear, in sentences; empty where it does.</summary>
    public IReadOnlyList<string> Short(ScaleDivision division) => Asks.Count == 0 || Stage != JobStage.TrimWeighed
        ? []
        : [.. Splitting.Split(Lean, Asks, GrindAsk.OfRest("Plain ground", s_all), division).Allotments.SelectMany(given => given.Reasons)];

    private static readonly GrindBlend s_all =
        new(Proportion.Whole, Ratio.Zero, Proportion.Zero, Proportion.Zero, Proportion.Zero, Weight.Zero, Weight.Zero);

    /// <summary>What was promised first, at the top; two queries.</summary>
    public static IReadOnlyList<TodayJob> Read(RecordsContext records)
    {
        var animals = TodayAnimal.Read(records);
        return
        [
            .. (from job in records.Jobs.AsNoTracking()
                where job.HandedOverAt == null
                from ask in records.GrindOrders.Where(ask => ask.JobId == job.Id).DefaultIfEmpty()
                from formula in records.FormulaVersions
                    .Where(formula => formula.ProductId == ask.ProductId && formula.Number == records.FormulaVersions.Where(other => other.ProductId == formula.ProductId).Max(other => other.Number)).DefaultIfEmpty()
                orderby job.PromisedFor == null, job.PromisedFor, job.Number, ask.Position
                select new
                {
                    Job = job,
                    Owner = job.Owner.Name,
                    job.Owner.Phone,
                    Lean = records.WeighIns.Where(one => one.JobId == job.Id && one.Kind == WeighInKind.LeanTrim && one.Strike == null).Sum(one => one.Net.Milligrams),
                    IsInvoiced = records.Invoices.Any(invoice => invoice.JobId == job.Id && invoice.CreditsInvoiceId == null && !records.Invoices.Any(credit => credit.CreditsInvoiceId == invoice.Id)),
                    Balance = records.Invoices.Where(invoice => invoice.JobId == job.Id).Sum(invoice => invoice.Total.Cents)
                        - records.Payments.Where(payment => payment.JobId == job.Id).Sum(payment => payment.Amount.Cents),
                    BoxesHere = records.Boxes.Count(box => box.JobId == job.Id && box.UnpackedAt == null && box.HandOverId == null),
                    HasLeftInPart = records.HandOvers.Any(one => one.JobId == job.Id),
                    Ask = ask,
                    Product = records.Products.Where(product => product.Id == ask.ProductId).Select(product => product.Name).FirstOrDefault(),
                    Formula = formula,
                    Additions = records.FormulaIngredients.Where(line => line.FormulaVersionId == formula.Id)
                        .Sum(line => line.AmountMillionths * (
                            line.Basis == FormulaBasis.PercentOfBlock ? 80 : line.Basis == FormulaBasis.OuncesPer25Pounds ? 20 : line.Basis == FormulaBasis.GramsPerKilogram ? 8 : 5)),
                })
                .AsEnumerable()
                .GroupBy(row => row.Job.Id)
                .Select(rows => (First: rows.First(), Asks: rows.Where(row => row.Ask is not null)))
                .Select(job => new TodayJob(
                    job.First.Job.Id, job.First.Job.Number, job.First.Owner, job.First.Phone, job.First.Job.TakenAt, job.First.Job.PromisedFor, job.First.Job.Stage,
                    job.First.Job.DetailsComplete, job.First.Job.BoxedAt, Weight.FromMilligrams(job.First.Lean), job.First.IsInvoiced, Money.FromCents(job.First.Balance),
                    job.First.BoxesHere, job.First.HasLeftInPart, [.. animals[job.First.Job.Id]],
                    // Percent, ounces to 25 and to 100 lb and grams to the kilogram, all as parts of 8 thousand million: 100 lb are 1,600 oz.
                    [.. job.Asks.Select(row => new GrindAsk(row.Product!, row.Ask.Kind, row.Ask.Amount, row.Ask.Percent, new GrindBlend(
                        row.Formula.LeanShare, Ratio.Of(row.Additions, 8_000_000_000), row.Formula.LossTypical, row.Formula.LossLow, row.Formula.LossHigh, row.Formula.SmallestRun, row.Formula.Step)))]))
        ];
    }
}
