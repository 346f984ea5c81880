using System.Globalization;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Seasons.Tests.Generating;

/// <summary>Cutting: the checklist, lean trim in lugs, packed cuts, bone, what is thrown out; now and then a weight struck and weighed again.</summary>
internal static class OnTheTable
{
    /// <summary>Hundredths of a pound that go into a lug.</summary>
    private const int LugFrom = 1_700;
    private const int LugTo = 2_400;

    public static void Expect(Season season, JobInHand job, DateTime at) =>
        season.Plan(at, "start cutting", StaffRole.Cutter, "Cutting", () => Start(season, job));

    private static void Start(Season season, JobInHand job)
    {
        if (job.Job.StartCutting(season.Now) is { } refusal)
            throw new InvalidOperationException(refusal.Text);
        season.Changed(job.Job);
        var at = season.Now;
        void Then(string verb, Action work) => season.Plan(at += season.Dice.Minutes(6, 14), verb, StaffRole.Cutter, "Cutting", work);

        Then("tick the checklist", () => Tick(season, job));
        var hanging = job.Animals.Aggregate(Weight.Zero, (sum, animal) => sum + job.Fraction.Times(animal.Hanging));
        foreach (var net in Lugfuls(season.Dice, season.Dice.About(hanging, job.Animals[0].Stock.Lean)))
            Then("weigh at the table", () => FillLug(season, job, net));
        if (season.Dice.In(70))
            Then("weigh at the table", () => Weigh(season, job, WeighInKind.CutPack, job.Cuts = season.Dice.About(hanging, 14), packs: season.Dice.Between(6, 24)));
        Then("weigh at the table", () => Weigh(season, job, WeighInKind.Bone, season.Dice.About(hanging, 24)));
        if (season.Dice.In(50))
            Then("weigh at the table", () => Weigh(season, job, WeighInKind.FatTrim, season.Dice.About(hanging, 3)));
        if (season.Dice.In(60))
            Then("weigh at the table", () => Weigh(season, job, WeighInKind.Discard, season.Dice.About(hanging, 4), "bloodshot"));
        Then("finish cutting", () => Finish(season, job));
    }

    private static IEnumerable<Weight> Lugfuls(Dice dice, Weight lean)
    {
        var division = ScaleDivision.HundredthPound;
        for (var left = division.CountOf(lean); left > 0;)
        {
            var full = Math.Min(left, dice.Between(LugFrom, LugTo));
            left -= full;
            yield return division.FromCount(full);
        }
    }

    private static void Tick(Season season, JobInHand job)
    {
        foreach (var animal in job.Animals)
        {
            // The animal of several jobs is looked over once, by whoever cuts first.
            if (animal.IsLookedOver)
                continue;
            animal.IsLookedOver = true;
            foreach (var (code, _) in CutMenu.Checklist)
                season.Add(new ChecklistTick(animal.Animal.Id, code, season.Now, season.Hand.Id));
        }
    }

    private static void FillLug(Season season, JobInHand job, Weight net)
    {
        var filling = new Filling(season.Floor.TakeLug(), job.Job.Id, [.. job.Animals.Select(animal => animal.Animal.Id)], season.Now);
        season.Add(filling);
        foreach (var animal in filling.Animals)
            season.Add(animal, filling);
        season.AddTicket(TicketKind.Filling, filling.Id);
        job.Lugs.Add(new LugInHand(filling, season.Floor.Settings.BenchDivision.CountOf(net)));
        if (!season.Dice.In(1))
        {
            season.Add(Lean(season, filling, net));
            return;
        }

        var wrong = Lean(season, filling, net + Weight.FromPounds(10m));
        season.Add(wrong);
        season.Plan(season.Now + season.Dice.Minutes(1, 4), "strike out a weight", StaffRole.Cutter, "Cutting", () =>
        {
            wrong.StrikeOut("Keyed 10 lb too much", season.Now, season.Hand.Id);
            season.Add(wrong.Strike!, wrong);
            season.Add(Lean(season, filling, net));
        });
    }

    private static WeighIn Lean(Season season, Filling filling, Weight net) =>
        WeighIn.OfFilling(WeighInKind.LeanTrim, filling, filling.Tare + net, Bench(), season.Now, season.Hand.Id);

    private static void Weigh(Season season, JobInHand job, WeighInKind kind, Weight gross, string? note = null, int? packs = null) =>
        season.Add(WeighIn.OfJob(
            kind, job.Job.Id, job.Animals is [var only] ? only.Animal.Id : null, gross, Weight.Zero, Bench(note, packs), season.Now, season.Hand.Id));

    private static Reading Bench(string? note = null, int? packs = null) => new("bench", ScaleDivision.HundredthPound, note, packs);

    private static void Finish(Season season, JobInHand job)
    {
        job.Job.FinishCutting(season.Now);
        season.Changed(job.Job);
        if (season.Dice.In(1))
            Dispute(season, job);
        AtTheGrind.Expect(season, job, InTheCooler.Morning(season.Now, 1) + season.Dice.Minutes(0, 240));
    }

    private static void Dispute(Season season, JobInHand job)
    {
        var hold = Hold.OnJob(job.Job, HoldReason.Dispute, string.Create(CultureInfo.InvariantCulture, $"Says there were {job.Animals.Count + 1} animals"), season.Now, season.Hand.Id);
        season.Add(hold);
        season.Plan(season.Now.AddHours(12), "release a hold", StaffRole.Manager, "Counter", () =>
        {
            hold.Release(season.Now, season.Hand.Id, "Looked at together and settled");
            season.Changed(hold);
        });
    }
}
