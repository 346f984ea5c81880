using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Process;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Kitchen;

/// <summary>A batch as its pages show it: what is in it, its record, what holds it, what comes next. Five queries.</summary>
public sealed class BatchView
{
    private readonly ShopDay _shop;

    private BatchView(Batch batch, BatchLines lines, IReadOnlyList<DispositionLine> dispositions, IReadOnlyList<KitchenHold> holds, ShopDay shop)
    {
        (Batch, Lines, Dispositions, Holds, _shop) = (batch, lines, dispositions, holds, shop);
        Loads = [.. batch.Loads.OrderBy(load => load.Number)];
        Verdicts = batch.VerdictsOn(lines, shop.Settings.BenchDivision);
        var open = Loads.Where(load => load.MixedAt is null).OrderByDescending(load => load.Drawn.IsPositive).FirstOrDefault();
        Progress = new BatchProgress(
            holds.Any(hold => hold.BatchId is not null), open?.Number, open is not null && BatchProgress.IsFull(open.Lean.Milligrams, open.Drawn.Milligrams), batch.MixedAt,
            batch.FormulaVersion.RestMinutes, lines.StepAt(BatchStepKind.RestStarted), lines.StepAt(BatchStepKind.Stuffed), lines.StepAt(BatchStepKind.HeatStarted), lines.StepAt(BatchStepKind.ChillStarted),
            Needs, lines.Finished.Count > 0)
        {
            IsChilled = Verdicts.Chilling is { Verdict: ProcessVerdict.Meets } || lines.StepAt(BatchStepKind.Packed) is not null,
        };
        OpenLoad = open;
    }

    public Batch Batch { get; }

    public BatchLines Lines { get; }

    /// <summary>What was done about a record that does not meet, in the order it was written down.</summary>
    public IReadOnlyList<DispositionLine> Dispositions { get; }

    public IReadOnlyList<KitchenHold> Holds { get; }

    public IReadOnlyList<Load> Loads { get; }

    public BatchProgress Progress { get; }

    public ProcessVerdicts Verdicts { get; }

    public Load? OpenLoad { get; }

    /// <summary>The batch's ticket; empty once it is over, for then nobody scans it any more.</summary>
    public string Code => IsOpen && Lines.Ticket is { } ticket ? ticket.Print() : "";

    public ProcessNeeds Needs => Batch.Product.Needs();

    public bool IsOpen => Batch is { ReleasedAt: null, EndedAt: null };

    /// <summary>The cooking is over: it went into the chill, was packed or weighed.</summary>
    public bool IsCooked => Progress.ChillStartedAt is not null || Progress.IsWeighed || Lines.StepAt(BatchStepKind.Packed) is not null;

    public bool HasMeat => Loads.Any(load => load.Drawn.IsPositive);

    public NextInKitchen Next => Progress.NextAt(_shop.Now);

    public string NextWords => KitchenWords.Next(Progress, Holds.Where(hold => hold.BatchId is not null).Select(hold => hold.Reason), _shop);

    public IReadOnlyList<BatchEntry> Entries => Batch.Placed();

    public IReadOnlyList<string> Owners => [.. Entries.Select(entry => entry.Job.Owner.Name).Distinct()];

    /// <summary>What the record lacks, and what holds the release.</summary>
    public IReadOnlyList<Finding> Missing =>
    [
        .. Holds.Where(hold => hold.StopsRelease).Select(hold => new Finding("", $"{hold.Whose}: on hold, {Wording.Of(hold.Reason)}.")),
        .. Batch.MissingFrom(Lines, Dispositions, _shop.Settings.BenchDivision),
    ];

    /// <summary>Loads mixed with cure of which no second weighing is noted; their release says so, and is not refused for it.</summary>
    public IReadOnlyList<Load> WeighedOnce => [.. Loads.Where(load => load.LacksSecondWeighing(load.Ingredients))];

    /// <summary>Every job whose meat is in the batch or meant for it, each once: those to be told where something is wrong.</summary>
    public IReadOnlyList<Job> Touched =>
    [
        .. Entries.Select(entry => entry.Job)
            .Concat(Loads.SelectMany(load => load.Draws).Where(draw => draw.StruckAt is null).Select(draw => draw.Filling.Job))
            .DistinctBy(job => job.Id).OrderBy(job => job.Number)
    ];

    public bool IsMeatWrong => Holds.Any(hold => hold.BatchId is not null && hold.Reason == HoldReason.WrongMeatIn);

    /// <summary>How the finished weight goes back, or went back, to each job.</summary>
    public IReadOnlyList<GoingBack> GoingBack => Pages.Kitchen.GoingBack.Of(this, _shop.Settings.BenchDivision);

    /// <summary>Parts of the record that its way of making is held to.</summary>
    public IReadOnlyList<ReadingStage> Stages =>
    [
        .. Verdicts.Fermenting is null ? Array.Empty<ReadingStage>() : [ReadingStage.Fermenting],
        .. Verdicts.Cooking is null ? Array.Empty<ReadingStage>() : [ReadingStage.Cooking],
        .. Verdicts.Chilling is null ? Array.Empty<ReadingStage>() : [ReadingStage.Chilling],
    ];

    /// <summary>Parts that are over, do not meet or are not shown, and that no letter or rework answers for.</summary>
    public IReadOnlyList<ReadingStage> Unmet => [.. Stages.Where(stage => IsOver(stage) && Verdicts.Open(stage) && Dispositions.AnswerFor(stage, Lines) is null)];

    /// <summary>Nothing more will be read of it.</summary>
    public bool IsOver(ReadingStage stage) => stage switch
    {
        ReadingStage.Cooking => IsCooked,
        ReadingStage.Chilling => Verdicts.Chilling is { Verdict: ProcessVerdict.DoesNotMeet } || Lines.StepAt(BatchStepKind.Packed) is not null || Progress.IsWeighed,
        ReadingStage.Fermenting => Progress.HeatStartedAt is not null || Progress.IsWeighed,
    };

    /// <summary>Made in pieces, which are counted: its formula has a casing.</summary>
    public bool IsInPieces => Batch.FormulaVersion.CasingHolds is not null;

    /// <summary>Where its weight went; null before it is mixed.</summary>
    public BatchBalance? Balance => Batch.MixedAt is null ? null : BatchBalance.Of(Batch, Lines, _shop.Settings.BenchDivision);

    public bool HasReadings(ReadingStage stage) => Lines.Of(BatchLineKind.Reading).Any(line => line.Stands && line.What == (int)stage);

    public static BatchView? Find(RecordsContext records, int id, ShopDay shop)
    {
        return records.ReadBatch(id) is { } batch ? new BatchView(batch, records.LinesOf(id), records.DispositionsOf(id), KitchenHold.OfBatch(records, id, batch.Loads, shop), shop) : null;
    }
}
