using ProcessorDesk.Records.Tests.Cast;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Grinding;
using Xunit;

namespace ProcessorDesk.Records.Tests.Jobs;

public sealed class JobTests
{
    private static readonly DateTime _at = new(2026, 11, 25, 15, 30, 0, DateTimeKind.Utc);

    private static Job NewJob(bool complete = true)
    {
        var job = new Job(1001, new Owner("Sample Owner", "555-0100"), _at, takenById: 1, priceListId: 1);
        if (complete)
            job.CompleteDetails();
        return job;
    }

    private static GrindOrder Ask(int position, AskKind kind) => new(position, 1, kind, Weight.Zero, Proportion.Zero);

    private static CutOrderLine Loin => new(1, "loin", "steak", null, 4);

    [Fact]
    public void Cutting_does_not_start_while_details_are_missing()
    {
        var job = NewJob(complete: false);

        Assert.Contains("not complete", job.StartCutting(_at)!.Text, StringComparison.Ordinal);
        Assert.Null(job.CuttingStartedAt);

        job.CompleteDetails();
        Assert.Null(job.StartCutting(_at));
        Assert.Equal(_at, job.CuttingStartedAt);
    }

    [Fact]
    public void The_moments_of_the_first_knife_and_of_the_last_stay()
    {
        var job = NewJob();
        Assert.NotNull(job.FinishCutting(_at));

        job.StartCutting(_at);
        job.StartCutting(_at.AddHours(1));
        job.FinishCutting(_at.AddHours(2));
        job.FinishCutting(_at.AddHours(3));

        Assert.Equal((_at, _at.AddHours(2)), (job.CuttingStartedAt, job.CuttingDoneAt));
    }

    [Fact]
    public void The_cut_order_locks_at_the_first_knife()
    {
        var job = NewJob();
        Assert.Null(job.OrderCuts([Loin]));
        job.StartCutting(_at);

        var refusal = job.OrderCuts([]);

        Assert.Equal("CutOrder", refusal!.Field);
        Assert.Single(job.CutOrder);
    }

    [Fact]
    public void Asks_lock_when_the_split_is_agreed_and_open_when_it_is_withdrawn()
    {
        var job = NewJob();
        Assert.Null(job.OrderGrind([Ask(1, AskKind.Rest)]));
        job.AgreeSplit(_at);

        Assert.Equal("Asks", job.OrderGrind([])!.Field);
        Assert.Single(job.Asks);

        job.WithdrawSplit();
        Assert.Null(job.OrderGrind([]));
        Assert.Empty(job.Asks);
    }

    [Fact]
    public void Only_one_ask_takes_the_rest()
    {
        var job = NewJob();

        Assert.Contains("Only one", job.OrderGrind([Ask(1, AskKind.Rest), Ask(2, AskKind.Rest)])!.Text, StringComparison.Ordinal);
        Assert.Empty(job.Asks);
        Assert.Null(job.OrderGrind([Ask(1, AskKind.Percent), Ask(2, AskKind.Rest)]));
    }

    [Fact]
    public void A_split_is_agreed_once_until_it_is_withdrawn()
    {
        var job = NewJob();
        job.AgreeSplit(_at);

        Assert.Throws<InvalidOperationException>(() => job.AgreeSplit(_at.AddHours(1)));
        Assert.NotNull(job.ReopenCutting());

        job.WithdrawSplit();
        job.AgreeSplit(_at.AddHours(2));
        Assert.Equal(_at.AddHours(2), job.SplitAgreedAt);
    }

    [Fact]
    public void What_was_handed_over_and_signed_does_not_change()
    {
        var job = NewJob();
        job.HandOver(_at, 1, " Sample Owner ");

        Assert.Throws<InvalidOperationException>(() => job.HandOver(_at.AddHours(1), 2, "Somebody Else"));
        Assert.Equal(("Sample Owner", _at), (job.HandedOverTo, job.HandedOverAt!.Value));
        Assert.All(
            (Finding?[])[job.OrderCuts([Loin]), job.OrderGrind([]), job.StartCutting(_at), job.ReopenCutting()],
            refusal => Assert.Contains("handed over", refusal!.Text, StringComparison.Ordinal));
    }

    [Fact]
    public void It_is_not_handed_over_to_nobody() => Assert.Throws<ArgumentException>(() => NewJob().HandOver(_at, 1, " "));

    [Fact]
    public void A_changed_order_bears_a_new_sheet_number()
    {
        var job = NewJob();

        job.ReviseSheet();

        Assert.Equal(2, job.SheetRevision);
    }
}
