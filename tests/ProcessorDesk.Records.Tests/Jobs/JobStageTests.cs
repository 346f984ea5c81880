using Xunit;

namespace ProcessorDesk.Records.Tests.Jobs;

public sealed class JobStageTests
{
    private static readonly DateTime _at = new(2026, 11, 25, 15, 30, 0, DateTimeKind.Utc);

    [Theory]
    [InlineData(false, false, false, false, false, JobStage.DetailsMissing)]
    [InlineData(true, false, false, false, false, JobStage.InCooler)]
    [InlineData(true, true, false, false, false, JobStage.OnTable)]
    [InlineData(true, true, true, false, false, JobStage.TrimWeighed)]
    [InlineData(true, true, true, true, false, JobStage.SplitAgreed)]
    [InlineData(true, true, true, true, true, JobStage.HandedOver)]
    [InlineData(true, true, true, false, true, JobStage.HandedOver)]
    [InlineData(false, false, false, false, true, JobStage.HandedOver)]
    public void The_stage_is_the_latest_fact(bool details, bool started, bool done, bool split, bool gone, JobStage stage) =>
        Assert.Equal(stage, Job.StageOf(details, If(started), If(done), If(split), If(gone)));

    [Fact]
    public void Every_set_of_facts_has_a_stage()
    {
        var stages = Enumerable.Range(0, 32).Select(facts =>
            Job.StageOf((facts & 1) != 0, If((facts & 2) != 0), If((facts & 4) != 0), If((facts & 8) != 0), If((facts & 16) != 0)));

        Assert.Equal(Enum.GetValues<JobStage>(), stages.Distinct().Order());
    }

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
        job.HandOver(_at, 1, "Sample Owner");
        Assert.Equal(JobStage.HandedOver, job.Stage);
    }

    private static DateTime? If(bool isSo) => isSo ? _at : null;
}
