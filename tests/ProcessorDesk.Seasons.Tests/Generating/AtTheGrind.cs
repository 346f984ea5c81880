using ProcessorDesk.Records;

namespace ProcessorDesk.Seasons.Tests.Generating;

/// <summary>Splits are agreed on the lean weighed; now and then one is taken back and agreed anew.</summary>
internal static class AtTheGrind
{
    public static void Expect(Season season, JobInHand job, DateTime at) =>
        season.Plan(at, "agree the split", StaffRole.Clerk, "Grind", () => Agree(season, job));

    private static void Agree(Season season, JobInHand job)
    {
        var division = season.Floor.Settings.BenchDivision;
        var plan = GrindPlan.Of(division.FromCount(job.Lugs.Sum(lug => lug.Left)), job.Asks, season.Floor.PlainGround, division);
        job.Job.AgreeSplit(season.Now);
        season.Changed(job.Job);
        var split = new AgreedSplit(
            job.Job.Id, plan.Split.Lean, season.Now, season.Hand.Id,
            plan.Lines.Select((line, i) => new GrindAllotment(i, line.Ask.Product.Id, line.Ask.Formula.Id, line.Given)));
        season.Add(split);
        foreach (var allotment in split.Allotments)
            season.Add(allotment, split);
        if (season.Dice.In(1))
        {
            season.Plan(season.Now + season.Dice.Minutes(10, 40), "withdraw the split", StaffRole.Clerk, "Grind", () => Withdraw(season, job, split));
            return;
        }

        job.Products.AddRange(split.Allotments.Zip(plan.Lines, (allotment, line) => new ProductInHand(job, allotment, line.Ask.Formula)).Where(product => product.Allotment.Green.IsPositive));
        season.Kitchen.Expect(job);
    }

    private static void Withdraw(Season season, JobInHand job, AgreedSplit split)
    {
        split.Withdraw(season.Now, season.Hand.Id, "The owner called");
        job.Job.WithdrawSplit();
        season.Changed(split);
        season.Changed(job.Job);
        Expect(season, job, season.Now + season.Dice.Minutes(1, 10));
    }
}
