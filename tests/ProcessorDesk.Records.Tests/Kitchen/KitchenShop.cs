using System.Globalization;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records.Tests.Cast;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Formulas;
using ProcessorDesk.Trade.Grinding;

namespace ProcessorDesk.Records.Tests.Kitchen;

/// <summary>
/// A shop with four products and a mixer of 25 lb. Cure at 4 oz of a 6.25 % cure to 100 lb, the published use level (9 CFR 424.21(c)): 0.25 %
/// of the meat block. Seasoning makes the additions 4 % of ring, 3.5 % of summer and 2 % of hot sausage.
/// </summary>
public sealed class KitchenShop : IDisposable
{
    public const string Ring = "Ring sausage";
    public const string Summer = "Summer sausage";
    public const string Hot = "Hot sausage";
    public const string Jerky = "Jerky";

    public const int RestMinutes = 240;

    public KitchenShop()
    {
        File.Do((records, act) =>
        {
            Add(records, act, Ring, ProcessKind.Smoked, 70m, (8m, 10m, 12m), 3.75m, RestMinutes);
            Add(records, act, Summer, ProcessKind.Cooked, 80m, (10m, 15m, 20m), 3.25m, 0);
            Add(records, act, Hot, ProcessKind.Fresh, 75m, (0m, 0m, 0m), 2m, 0);
            Add(records, act, Jerky, ProcessKind.Dried, 100m, (50m, 55m, 65m), 2m, 0);
            return 0;
        });
        Hand = new Hand(File.Do((records, _) =>
        {
            var hand = new Staff("Kit Hollow", "KH", StaffRole.Kitchen);
            records.Staff.Add(hand);
            records.SaveChanges();
            return hand.Id;
        }), "Kitchen");
    }

    public ShopFile File { get; } = new();

    /// <summary>Somebody of the kitchen who is not the manager.</summary>
    public Hand Hand { get; }

    /// <summary>A job with its lean in lugs, its split agreed.</summary>
    /// <param name="nets">Pounds of lean, a lug each.</param>
    public MadeJob Job(string owner, Pooling pooling, decimal[] nets, params (string Product, AskKind Kind, decimal Amount)[] asks) => File.Do((records, act) =>
    {
        var job = Sample.Job(records, act, owner);
        var deer = Sample.Deer(records, job, act, "K " + owner);
        job.Arrange(new DateOnly(2026, 12, 11), pooling, PackWrap.Vacuum, noPork: false, notes: null);
        job.OrderGrind([.. asks.Select((ask, i) => new GrindOrder(
            i, records.Products.Single(product => product.Name == ask.Product).Id, ask.Kind,
            ask.Kind is AskKind.OwnLean or AskKind.Finished ? Weight.FromPounds(ask.Amount) : Weight.Zero,
            ask.Kind == AskKind.Percent ? Proportion.FromPercent(ask.Amount) : Proportion.Zero))]);
        job.CompleteDetails();
        job.StartCutting(act.Now);
        var fillings = nets.Select(net =>
        {
            var filling = Sample.Lug(records, job, deer, act);
            Sample.Lean(records, filling, net + filling.Tare.Pounds, act);
            return filling.Id;
        }).ToList();
        job.FinishCutting(act.Now);
        records.SaveChanges();
        var agreed = records.AgreeSplit(job.Id, records.LeanOf(job.Id, ScaleDivision.HundredthPound), act);
        if (!agreed.IsDone)
            throw new InvalidOperationException(string.Join(' ', agreed.Findings.Select(finding => finding.Text)));
        records.SaveChanges();
        var allotments = records.GrindAllotments.Where(one => records.AgreedSplits.Any(split => split.Id == one.AgreedSplitId && split.JobId == job.Id))
            .OrderBy(one => one.Position).Select(one => new { one.Product.Name, one.Id }).AsEnumerable()
            .GroupBy(one => one.Name).ToDictionary(same => same.Key, same => same.First().Id);
        return new MadeJob(job.Id, job.Number, deer.Id, fillings, allotments);
    });

    /// <summary>The two deer of one owner: 92.75 lb of lean, four asks; 25.00 lb of it for ring sausage.</summary>
    public MadeJob TwoDeer(string owner, Pooling pooling = Pooling.Own) => Job(
        owner, pooling, [31.52m, 26.38m, 19.20m, 15.65m],
        (Ring, AskKind.OwnLean, 25m), (Summer, AskKind.Finished, 20m), (Hot, AskKind.Finished, 15m), ("Plain ground", AskKind.Rest, 0m));

    /// <summary>One verb by the kitchen's hand, or by another.</summary>
    public Outcome Try(Func<RecordsContext, Act, Outcome> work, Hand? hand = null)
    {
        using var records = File.Open();
        return new Verbs(records, File.Gate, File.Clock).Run("try in the kitchen", hand ?? Hand, null, act => work(records, act));
    }

    /// <summary>The same, which must be done; the number it gave.</summary>
    public int Must(Func<RecordsContext, Act, Outcome> work, Hand? hand = null)
    {
        var outcome = Try(work, hand);
        return outcome.IsDone
            ? int.Parse(outcome.Result, CultureInfo.InvariantCulture)
            : throw new InvalidOperationException(string.Join(' ', outcome.Findings.Select(finding => finding.Text)));
    }

    public T Read<T>(Func<RecordsContext, T> read)
    {
        using var records = File.Open();
        return read(records);
    }

    public int Plan(params int[] allotments) => Must((records, act) => records.PlanBatch(allotments, act));

    public List<int> LoadsOf(int batch) => Read(records => records.Loads.Where(load => load.BatchId == batch).OrderBy(load => load.Number).Select(load => load.Id).ToList());

    public Outcome Draw(int load, int filling, decimal pounds, bool empties = false, string? alreadyIn = null) =>
        Try((records, act) => records.DrawMeat(new DrawOrder(load, filling, Weight.FromPounds(pounds), empties, alreadyIn), act));

    /// <summary>Mixes with what the formula asks for on the meat as drawn, where nothing else is said.</summary>
    /// <param name="cureGrams">Cure weighed in; null for what is asked for.</param>
    /// <param name="againGrams">What the second weighing of the cure showed; null for the same.</param>
    /// <param name="againBy">Whose hand weighed it again; null for the hand that mixes.</param>
    public Outcome Mix(
        int load, decimal fat, decimal? cureGrams = null, string? lowBecause = null, string? alreadyIn = null, Hand? hand = null, decimal? againGrams = null, Hand? againBy = null, bool isWeighedTwice = true) => Try((records, act) =>
    {
        var one = records.Loads.AsNoTracking().Include(found => found.Draws).Include(found => found.Batch.FormulaVersion.Ingredients).Include(found => found.Batch.FormulaVersion.Product)
            .Single(found => found.Id == load);
        var scaled = Trade.Formulas.FormulaScaling.Scale(one.Batch.FormulaVersion.ToTrade(), one.Drawn + Weight.FromPounds(fat), ScaleDivision.TenthGram);
        var weighed = one.Batch.FormulaVersion.Ingredients.OrderBy(line => line.Position).Zip(scaled.Lines).ToDictionary(
            line => line.First.Position,
            line => (line.First.IsCure && cureGrams is { } grams ? Weight.FromGrams(grams) : line.Second.Amount, WeightUnit.Gram));
        var order = new MixOrder(load, Weight.FromPounds(fat), weighed, lowBecause, alreadyIn)
        {
            Again = againGrams is { } again ? new() { [1] = (Weight.FromGrams(again), WeightUnit.Gram) } : isWeighedTwice ? weighed : [],
            AgainById = againBy?.Id,
        };
        return records.MixLoad(order, records.IsManager(act.Hand), act);
    }, hand);

    public void Dispose() => File.Dispose();

    private static void Add(RecordsContext records, Act act, string name, ProcessKind kind, decimal lean, (decimal Low, decimal Typical, decimal High) loss, decimal seasoning, int rest)
    {
        var product = new Product(name, kind, cured: kind is ProcessKind.Smoked or ProcessKind.Cooked);
        List<FormulaIngredient> lines = [new(0, "Seasoning", FormulaBasis.PercentOfBlock, seasoning, Proportion.Zero, Proportion.Zero, false)];
        if (product.Cured)
            lines.Add(new FormulaIngredient(1, "Pink curing salt", FormulaBasis.OuncesPer100Pounds, 4m, Proportion.FromPercent(6.25m), Proportion.Zero, false));
        product.Reformulate(new FormulaVersion(
            act.Now, Proportion.FromPercent(lean), lean < 100m ? "Pork trim" : null, lean < 100m,
            (Proportion.FromPercent(loss.Low), Proportion.FromPercent(loss.Typical), Proportion.FromPercent(loss.High)), Weight.Zero, Weight.Zero, lines, rest));
        records.Products.Add(product);
    }
}

/// <summary>A job as the kitchen finds it: its lugs in the order they were filled, its allotments by product.</summary>
public sealed record MadeJob(int Id, int Number, int AnimalId, IReadOnlyList<int> Lugs, IReadOnlyDictionary<string, int> Allotments);
