using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>What is done about a batch whose record does not meet or does not show.</summary>
public static class Dispositions
{
    /// <summary>
    /// Writes down a letter, a rework or that the owners were told, each with a name, a day and its reference. A letter or a rework makes a
    /// release possible, so only the manager writes it.
    /// </summary>
    /// <param name="today">By the shop's calendar.</param>
    public static Outcome WriteDisposition(this RecordsContext records, int batchId, DispositionOrder order, DateOnly today, Act act)
    {
        var batch = records.Batches.Single(one => one.Id == batchId);
        if (BatchRecord.Over(batch) is { } over)
            return Outcome.Refused(over);
        List<Finding> findings = [.. Missing(order, today)];
        if (Answers(order.Kind) && !records.IsManager(act.Hand))
            findings.Add(new Finding("", "Only the manager writes down a letter or a rework. Fetch the manager."));
        if (Answers(order.Kind) && batch.MixedAt is null)
            findings.Add(new Finding("", "Not every load is mixed yet: there is nothing to be judged."));
        if (findings.Count > 0)
            return Outcome.Refused(findings);
        records.Dispositions.Add(new Disposition(batchId, order, act.Now, act.Hand.Id));
        return Outcome.Done(batchId);
    }

    /// <summary>In the order they were written down; one query.</summary>
    public static IReadOnlyList<DispositionLine> DispositionsOf(this RecordsContext records, int batchId) =>
    [
        .. records.Dispositions.AsNoTracking().Where(one => one.BatchId == batchId).OrderBy(one => one.Id)
            .Select(one => new DispositionLine(
                one.Kind, one.Stage, one.Name, one.On, one.Reference, one.At, records.Staff.Where(staff => staff.Id == one.ById).Select(staff => staff.Initials).First()))
    ];

    /// <summary>It answers for a part of the record.</summary>
    public static bool Answers(DispositionKind kind) => kind switch
    {
        DispositionKind.Reworked or DispositionKind.ExpertsLetter => true,
        DispositionKind.OwnersTold => false,
    };

    /// <summary>
    /// The letter or rework that answers for a part of the record as it stands; null where there is none. A reading written down or struck
    /// out later makes another record of it, which nobody has judged.
    /// </summary>
    public static DispositionLine? AnswerFor(this IReadOnlyList<DispositionLine> dispositions, ReadingStage stage, BatchLines lines)
    {
        var changed = lines.Of(BatchLineKind.Reading).Where(line => line.What == (int)stage).Select(line => line.StruckAt ?? line.At).DefaultIfEmpty().Max();
        return dispositions.LastOrDefault(one => Answers(one.Kind) && one.Stage == stage && one.At >= changed);
    }

    private static IEnumerable<Finding> Missing(DispositionOrder order, DateOnly today)
    {
        var answers = Answers(order.Kind);
        if (answers && order.Stage is null)
            yield return new Finding("Stage", "Say what part of the record it answers for.");
        if (string.IsNullOrWhiteSpace(order.Name))
            yield return new Finding("Name", answers ? "Type whose letter or guidance it is." : "Type who told the owners.");
        if (order.On == default)
            yield return new Finding("On", "Type its date.");
        else if (order.On > today)
            yield return new Finding("On", "That day is still to come. Type the date it bears.");
        if (string.IsNullOrWhiteSpace(order.Reference))
            yield return new Finding("Reference", answers ? "Type the name and number it is filed under." : "Type what they were told, and how.");
    }
}
