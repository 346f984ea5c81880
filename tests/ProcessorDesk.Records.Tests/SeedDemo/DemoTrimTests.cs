using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade;
using Xunit;

namespace ProcessorDesk.Records.Tests.SeedDemo;

/// <summary>What hangs, what lies on the table and what is to be divided.</summary>
[Collection(DemoShelf.Name)]
public sealed class DemoTrimTests(DemoFile demo)
{
    [Fact]
    public void Animals_are_pooled_for_one_owner_and_shared_by_several()
    {
        using var records = demo.Open();
        var shares = records.Shares.Include(share => share.Animal).ToList();
        var bySpecies = shares.GroupBy(share => share.Animal).ToLookup(animal => animal.Key.Species, animal => animal.Select(share => share.Fraction).Order().ToList());

        Assert.Contains(shares.GroupBy(share => share.JobId), job => job.Count() == 2);
        Assert.Equal([[Ratio.Of(1, 2), Ratio.Of(1, 2)]], bySpecies[Species.Hog]);
        Assert.Equal([[Ratio.Of(1, 4), Ratio.Of(1, 4), Ratio.Of(1, 2)]], bySpecies[Species.Beef]);
        Assert.Single(bySpecies[Species.Elk]);
        Assert.True(bySpecies[Species.Lamb].Count() > 1);
    }

    [Fact]
    public void Something_waits_for_a_test_something_for_its_tag_and_neither_is_cut()
    {
        using var records = demo.Open();
        var held = records.Holds.Where(hold => hold.ReleasedAt == null && hold.AnimalId != null)
            .Select(hold => new { hold.Reason, Cut = records.Jobs.Any(job => job.CuttingStartedAt != null && job.Shares.Any(share => share.AnimalId == hold.AnimalId)) })
            .ToList();

        Assert.Equal([HoldReason.DiseaseTest, HoldReason.MissingTag], held.Select(hold => hold.Reason).Order());
        Assert.DoesNotContain(held, hold => hold.Cut);
    }

    [Fact]
    public void One_weight_on_the_table_is_struck_out_on_the_last_day()
    {
        using var records = demo.Open();
        var strike = Assert.Single(records.Strikes);
        var weighed = records.WeighIns.Include(one => one.Job).Single(one => one.Id == strike.WeighInId);

        Assert.Equal(JobStage.OnTable, weighed.Job!.Stage);
        Assert.True(demo.Now.UtcDateTime - strike.At < TimeSpan.FromHours(12));
    }

    [Fact]
    public void Only_one_owner_asked_for_more_than_the_trim_bears()
    {
        using var records = demo.Open();
        var waiting = records.Jobs.Where(job => job.CuttingDoneAt != null && job.SplitAgreedAt == null).Select(job => job.Id).ToList();
        var division = ScaleDivision.HundredthPound;

        Assert.True(waiting.Count > 1);
        Assert.Single(waiting, job => records.PlanGrind(job, records.LeanOf(job, division), division).Split.Allotments.Any(given => given.Reasons.Count > 0));
        Assert.Empty(records.GrindAllotments.Where(one => one.Reasons != ""));
        Assert.Contains(records.Jobs.Where(job => waiting.Contains(job.Id)), job => job.NoPork);
    }

    /// <summary>
    /// Boneless meat of a white-tail's hanging weight: 47 to 67 in a hundred (Wyoming; see docs/sources.md). Where bone and discard were weighed
    /// too, no more than the shop's tolerance of 5 in a hundred is open.
    /// </summary>
    [Fact]
    public void The_weights_of_an_animal_are_those_of_an_animal()
    {
        using var records = demo.Open();
        var division = ScaleDivision.HundredthPound;
        var cut = records.Jobs.Where(job => job.CuttingDoneAt != null).Select(job => job.Id).AsEnumerable().Select(job => records.WeightsOf(job, division)).ToList();

        Assert.Contains(cut, weights => weights.Bone.IsZero);
        Assert.All(cut, weights =>
        {
            var hanging = weights.Animals.Sum(animal => animal.Hanging!.Value.Pounds);
            var meat = weights.Lean.Pounds + weights.Cuts.Pounds;
            if (weights.Animals.All(animal => animal.Species == Species.WhiteTailDeer))
                Assert.InRange(meat / hanging, 0.47m, 0.67m);
            if (weights.Bone.IsPositive)
                Assert.InRange((meat + weights.Bone.Pounds + weights.Discard.Pounds) / hanging, 0.95m, 1m);
        });
    }

    [Fact]
    public void What_was_cut_has_its_checklist_ticked()
    {
        using var records = demo.Open();

        Assert.All(records.Shares.Where(share => share.Job.CuttingDoneAt != null).Select(share => share.AnimalId).Distinct().ToList(), animal =>
            Assert.Equal(CutMenu.Checklist.Count, records.ChecklistTicks.Count(tick => tick.AnimalId == animal)));
    }

    [Fact]
    public void No_lug_still_holds_the_meat_of_a_job_that_left()
    {
        using var records = demo.Open();

        Assert.NotEmpty(records.Fillings.Where(filling => filling.Job.HandedOverAt != null));
        Assert.Empty(records.Fillings.Open().Where(filling => filling.Job.MadeAt != null));
    }
}
