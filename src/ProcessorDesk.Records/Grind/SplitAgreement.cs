using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>Agreeing a split and taking it back.</summary>
public static class SplitAgreement
{
    /// <param name="shownLean">The lean the person agreed to; refused where it was weighed otherwise since.</param>
    public static Outcome AgreeSplit(this RecordsContext records, int jobId, Weight shownLean, Act act)
    {
        var job = records.Jobs.Single(one => one.Id == jobId);
        var division = records.Shop.AsNoTracking().Single().BenchDivision;
        var lean = records.LeanOf(jobId, division);
        if (Refusal(records, job, lean, shownLean, division) is { Count: > 0 } findings)
            return Outcome.Refused(findings);

        var plan = records.PlanGrind(jobId, lean, division);
        records.AgreedSplits.Add(new AgreedSplit(
            jobId, lean, act.Now, act.Hand.Id, plan.Lines.Select((line, i) => new GrindAllotment(i, line.Ask.Product.Id, line.Ask.Formula.Id, line.Given))));
        job.AgreeSplit(act.Now);
        if (plan.Lines.All(line => line.Given.Green.IsZero))
            job.Made(act.Now);
        return Outcome.Done(jobId);
    }

    public static Outcome WithdrawSplit(this RecordsContext records, int jobId, string? because, Act act)
    {
        if (string.IsNullOrWhiteSpace(because))
            return Outcome.Refused(new Finding("Because", "Say why the split is taken back."));
        var job = records.Jobs.Single(one => one.Id == jobId);
        var split = records.AgreedSplits.SingleOrDefault(one => one.JobId == jobId && one.WithdrawnAt == null);
        if (split is null)
            return Outcome.Refused(new Finding("", "No split is agreed for this job."));
        if (job.HandedOverAt is not null || records.Invoices.Standing().Any(invoice => invoice.JobId == jobId))
            return Outcome.Refused(new Finding("", "An invoice stands on this split. Credit the invoice first."));
        if (records.BatchEntries.Any(entry => entry.LeftAt == null && entry.Allotment.AgreedSplitId == split.Id))
            return Outcome.Refused(new Finding("", "Some of it is planned into a batch already. Take that batch off the plan first."));
        split.Withdraw(act.Now, act.Hand.Id, because);
        job.WithdrawSplit();
        return Outcome.Done(jobId);
    }

    private static List<Finding> Refusal(RecordsContext records, Job job, Weight lean, Weight shownLean, ScaleDivision division)
    {
        List<Finding> findings = [.. records.Stopping(job.Id, HeldAct.Grind)];
        if (job.AsksLocked)
            findings.Add(new Finding("", "A split is agreed already. Withdraw it first to make another."));
        if (job.CuttingDoneAt is null)
            findings.Add(new Finding("", "Cutting is not finished: more trim may come. Finish it on the cut sheet first."));
        if (lean.IsZero && records.WeightsOf(job.Id, division).Cuts.IsZero)
            findings.Add(new Finding("", "No meat is weighed yet: neither lean trim nor packed cuts."));
        if (division.CountOf(lean) != division.CountOf(shownLean))
            findings.Add(new Finding("", $"The lean was {division.Print(shownLean)} when this page was shown and is {division.Print(lean)} now. Look at the split again, then agree."));
        if (job.NoPork && records.GrindOrders.Any(ask => ask.JobId == job.Id && ask.Product.Formulas.Any(formula =>
                formula.Number == ask.Product.Formulas.Max(other => other.Number)
                && (formula.AddedFatIsPork || formula.CasingIsPork || formula.Ingredients.Any(line => line.IsPork)))))
            findings.Add(new Finding("", "This owner wants no pork, and a product asked for has pork in it. Change the order first."));
        return findings;
    }
}
