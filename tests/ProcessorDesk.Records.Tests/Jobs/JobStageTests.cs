using Xunit;

namespace ProcessorDesk.Records.Tests.Jobs;

public sealed class JobStageTests
{
    private static readonly DateTime _at = new(2026, 11, 25, 15, 30, 0, DateTimeKind.Utc);

    [Theory]
    [InlineData(0, JobStage.DetailsMissing)]
    [InlineData(1, JobStage.InCooler)]
    [InlineData(1 | 2, JobStage.OnTable)]
    [InlineData(1 | 2 | 4, JobStage.TrimWeighed)]
    [InlineData(1 | 2 | 4 | 8, JobStage.SplitAgreed)]
    [InlineData(1 | 2 | 4 | 8 | 16, JobStage.Made)]
    [InlineData(1 | 2 | 4 | 8 | 16 | 32, JobStage.Boxed)]
    [InlineData(1 | 2 | 4 | 8 | 16 | 32 | 64, JobStage.HandedOver)]
    [InlineData(1 | 2 | 4 | 64, JobStage.HandedOver)]
    [InlineData(64, JobStage.HandedOver)]
    public void The_stage_is_the_latest_fact(int facts, JobStage stage) => Assert.Equal(stage, StageOf(facts));

    [Fact]
    public void Every_set_of_facts_has_a_stage() =>
        Assert.Equal(Enum.GetValues<JobStage>(), Enumerable.Range(0, 128).Select(StageOf).Distinct().Order());

    [Fact]
    public void A_job_walks_the_stages_and_one_step_back()
    {
        var job = new Job(1001, new Owner("Sample Owner", "555-0100"), _at, 1, 1);
        Assert.Equal(JobStage.DetailsMissing, job.Stage);

        job.CompleteDetails();
        Assert.Equal(JobStage.InCooler, job.Stage);
        job.StartCutting(_at);
        Assert.Equal(JobStage.OnTable, job.Stage);
        job.FinishCutting(_at);
        Assert.Equal(JobStage.TrimWeighed, job.Stage);
        job.ReopenCutting();
        Assert.Equal(JobStage.OnTable, job.Stage);
        job.FinishCutting(_at);
        job.AgreeSplit(_at);
        Assert.Equal(JobStage.SplitAgreed, job.Stage);
        job.WithdrawSplit();
        Assert.Equal(JobStage.TrimWeighed, job.Stage);
        job.AgreeSplit(_at);
        job.Made(_at);
        Assert.Equal(JobStage.Made, job.Stage);
        job.Boxed(_at, 1);
        Assert.Equal(JobStage.Boxed, job.Stage);
        job.BoxesReopened();
        Assert.Equal(JobStage.Made, job.Stage);
        job.HandOver(_at, 1, "Sample Owner");
        Assert.Equal(JobStage.HandedOver, job.Stage);
    }

    /// <param name="facts">A bit for each: details, started, done, split, made, boxed, gone.</param>
    private static JobStage StageOf(int facts) => Job.StageOf((facts & 1) != 0, If(facts & 2), If(facts & 4), If(facts & 8), If(facts & 16), If(facts & 32), If(facts & 64));

    private static DateTime? If(int isSo) => isSo != 0 ? _at : null;
}
