using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Formulas;

namespace ProcessorDesk.Seasons.Tests.Generating;

/// <summary>A batch on its way: loads drawn from the owners' lugs and mixed, then its record, the finished weight and the release.</summary>
internal sealed class BatchInHand(Season season, Batch batch, IReadOnlyList<Load> loads, IReadOnlyList<(BatchEntry Entry, ProductInHand Product)> entries)
{
    private readonly ScaleDivision _division = season.Floor.Settings.BenchDivision;
    private readonly FormulaVersion _formula = entries[0].Product.Formula;
    private bool _isHeld;

    public void Expect()
    {
        var at = season.Now;
        foreach (var load in loads)
        {
            season.Plan(at += season.Dice.Minutes(10, 20), "draw meat", StaffRole.Kitchen, "Kitchen", () => DrawInto(load));
            season.Plan(at += season.Dice.Minutes(4, 8), "mix a load", StaffRole.Kitchen, "Kitchen", () => Mix(load));
        }
    }

    private void DrawInto(Load load)
    {
        foreach (var part in load.Parts)
        {
            var job = entries.Single(one => one.Entry == part.Entry).Product.Job;
            var wanted = _division.CountOf(part.Lean);
            foreach (var lug in job.Lugs.Where(lug => lug.Left > 0))
            {
                var drawn = Math.Min(wanted, lug.Left);
                if (drawn == 0)
                    break;
                season.Add(new Draw(load.Id, lug.Filling.Id, part.Entry.Id, _division.FromCount(wanted), _division.FromCount(drawn), _division, null, season.Now, season.Hand.Id));
                (wanted, lug.Left) = (wanted - drawn, lug.Left - drawn);
                if (lug.Left == 0)
                    Empty(lug);
            }
        }
    }

    private void Empty(LugInHand lug)
    {
        lug.Filling.Empty(season.Now);
        season.Changed(lug.Filling);
        season.Floor.GiveBack(lug.Filling.Lug);
    }

    private void Mix(Load load)
    {
        var small = season.Floor.Settings.CureDivision;
        var scaled = FormulaScaling.Scale(_formula.ToTrade(), load.PlannedBlock, small).Lines;
        load.Mix(
            load.AddedFat,
            _formula.Ingredients.OrderBy(line => line.Position).Select((line, i) =>
                new LoadIngredient(line, season.Larder.OpenLot(line.IngredientId!.Value), scaled[i].Amount, scaled[i].Amount, small.Unit, new WeighedAgain(scaled[i].Amount, small.Unit, season.Hand.Id))),
            null, null, season.Now, season.Hand.Id);
        season.Changed(load);
        foreach (var line in load.Ingredients)
            season.Add(line, load);
        season.Larder.Use(load, _formula);
        if (load != loads[^1])
            return;
        batch.Mixed(BatchRules.Of(season.Floor.Settings, _formula.Product), season.Now);
        season.Changed(batch);
        season.Add(batch.Rules!, batch);
        Step(BatchStepKind.RestStarted);
        if (season.Dice.Between(1, 200) == 1)
            Hold();
        if (batch.Number % 40 == 0)
            TellOwners();
        KeepRecord();
    }

    /// <summary>By the batch's number and not by the dice, so that the rest of the season stays as it was.</summary>
    private void TellOwners() => season.Add(new Disposition(
        batch.Id, new DispositionOrder(DispositionKind.OwnersTold, null, "Sam Tester", DateOnly.FromDateTime(season.Now), "by telephone: the smokehouse was slow"), season.Now, season.Hand.Id));

    private BatchStep Step(BatchStepKind kind)
    {
        var step = new BatchStep(batch.Id, kind, season.Now, season.Hand.Id);
        season.Add(step);
        return step;
    }

    /// <summary>Each load counted, as many as its casings hold.</summary>
    private void Stuff()
    {
        var step = Step(BatchStepKind.Stuffed);
        foreach (var load in loads)
        {
            if (PiecesOf(load.Green) is { } pieces)
                season.Add(new StuffedPieces(step, load.Id, pieces), step);
        }
    }

    private int? PiecesOf(Weight green) => _formula.CasingHolds is { } holds ? (int)Math.Max(1, green.Milligrams / holds.Milligrams) : null;

    private void Hold()
    {
        _isHeld = true;
        var hold = Records.Hold.OnBatch(batch.Id, HoldReason.RecordIncomplete, "A reading is missing", season.Now, season.Hand.Id);
        season.Add(hold);
        season.Plan(InTheCooler.Morning(season.Now, 1), "release a hold", StaffRole.Manager, "Kitchen", () =>
        {
            hold.Release(season.Now, season.Hand.Id, "The reading was on the log");
            season.Changed(hold);
        });
    }

    private void KeepRecord()
    {
        var at = season.Now;
        void Then(int minutes, string verb, Action work) => season.Plan(at = at.AddMinutes(minutes), verb, StaffRole.Kitchen, "Kitchen", work);
        void Read(ReadingStage stage, int degrees) => Then(30, "note a reading", () => season.Add(BatchReading.OfTemperature(
            batch.Id, stage, 1, Temperature.FromFahrenheit(degrees + season.Dice.Between(0, 3)), season.Now, season.Now, season.Hand.Id)));

        if (_formula.Product.ProcessKind != ProcessKind.Fresh)
        {
            Then(60, "note a step", Stuff);
            Then(10, "note a step", () => Step(BatchStepKind.HeatStarted));
            foreach (var degrees in (int[])[110, 135, 152, 158])
                Read(ReadingStage.Cooking, degrees);
            Then(5, "note a step", () => Step(BatchStepKind.ChillStarted));
            foreach (var degrees in (int[])[140, 104, 75, 52, 36])
                Read(ReadingStage.Chilling, degrees);
        }

        Then(45, "note a step", () => Step(BatchStepKind.Packed));
        Then(10, "weigh the finished product", Weigh);
    }

    private void Weigh()
    {
        var expected = _division.Sum(entries.Select(one => one.Product.Allotment.Finished));
        var net = _division.Round(Weight.FromMilligrams(expected.Milligrams / 1_000 * season.Dice.Between(985, 1_015)));
        season.Add(WeighIn.OfBatch(batch.Id, null, net, Weight.Zero, new Reading("bench", _division, Packs: PiecesOf(net)), season.Now, season.Hand.Id));
        var release = _isHeld ? InTheCooler.Morning(season.Now, 1) + season.Dice.Minutes(20, 90) : season.Now + season.Dice.Minutes(10, 60);
        season.Plan(release, "release a batch", StaffRole.Kitchen, "Kitchen", () => Release(net));
    }

    private void Release(Weight net)
    {
        batch.Release(season.Now, season.Hand.Id);
        season.Changed(batch);
        var shares = _division.Split(net, [.. entries.Select(one => _division.CountOf(one.Product.Allotment.Green))]);
        var pieces = PiecesOf(net) is { } counted ? LargestRemainder.Split(counted, [.. entries.Select(one => _division.CountOf(one.Product.Allotment.Green))]) : null;
        foreach (var (i, ((entry, product), weight)) in entries.Zip(shares).Index())
        {
            season.Add(new FinishedShare(entry.Id, null, weight, (int?)pieces?[i]));
            product.Finished = weight;
        }

        AtTheTelephone.Expect(season, batch, entries.Select(one => one.Product.Job.Job).Distinct());
        foreach (var job in entries.Select(one => one.Product.Job).Distinct().Where(job => job.Products.All(product => product.Finished is not null)))
        {
            job.Job.Made(season.Now);
            season.Changed(job.Job);
            InTheFreezer.Expect(season, job);
        }
    }
}
