using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Yields;
using Xunit;

namespace ProcessorDesk.Records.Tests.Yields;

/// <summary>Where a job's weight went, step by step. The deer: 128.50 lb field-dressed, 94.00 hanging; every figure below is worked from these by hand.</summary>
public sealed class WayTests
{
    private static readonly ScaleDivision s_hundredth = ScaleDivision.HundredthPound;

    [Fact]
    public void Before_cutting_is_done_nothing_is_said_of_what_came_out()
    {
        var account = Account(Deer(lean: 20m, bone: 5m), [], isCut: false);

        Assert.Equal(["As it came in 128.50", "− Hide, head, feet 34.50", "Hanging 94.00"], Told(account));
        Assert.Null(account.Expected);
        Assert.Equal("", account.Verdict);
    }

    [Fact]
    public void Until_everything_is_released_the_made_weight_is_foretold()
    {
        // 40.00 lean; 30.00 goes with 10.00 pork and 1.20 spices into sausage, 10.00 stays plain.
        WayProduct[] products = [Product(10m, 40m, 41.2m, 37.08m), Product(0m, 10m, 10m, 10m, finished: 9.90m)];

        var told = Told(Account(Deer(lean: 40m, bone: 30m), products, isCut: true));

        Assert.Equal(
            ["Hanging 94.00", "− Bone 30.00", "− Not weighed apart 24.00", "Boneless meat 40.00", "+ Pork or fat added 10.00", "+ Spices, cure, water 1.20",
                "− Cooking and drying 4.22", "Made, about 46.98"],
            told[2..]);
    }

    [Fact]
    public void Once_everything_is_released_the_made_weight_is_what_the_scale_said_and_the_boxes_come_last()
    {
        WayProduct[] products = [Product(10m, 40m, 41.2m, 37.08m, finished: 36.55m), Product(0m, 10m, 10m, 10m, finished: 9.90m)];

        var told = Told(Account(Deer(lean: 40m, bone: 30m, cuts: 6m, boxes: 52.25m), products, isCut: true, isBoxed: true));

        // Boneless 46.00, + 11.20 = 57.20; made 36.55 + 9.90 + 6.00 = 52.45; boxed 52.25.
        Assert.Equal(
            ["Boneless meat 46.00", "+ Pork or fat added 10.00", "+ Spices, cure, water 1.20", "− Cooking and drying 4.75", "Made 52.45", "− Lost in packing 0.20", "In boxes 52.25"],
            told[5..]);
    }

    [Fact]
    public void A_batch_thrown_out_is_a_loss_with_a_name()
    {
        WayProduct[] products = [Product(10m, 40m, 41.2m, 37.08m) with { IsThrownOut = true }, Product(0m, 10m, 10m, 10m, finished: 9.90m)];

        var told = Told(Account(Deer(lean: 40m), products, isCut: true));

        Assert.Equal(["− Thrown out in the kitchen 41.20", "− Cooking and drying 0.10", "Made 9.90"], told[^3..]);
    }

    [Fact]
    public void Boxes_that_weigh_more_than_what_was_made_have_the_wrapping_on_them()
    {
        var told = Told(Account(Deer(lean: 40m, boxes: 40.30m), [Product(0m, 40m, 40m, 40m, finished: 40m)], isCut: true, isBoxed: true));

        Assert.Equal(["Made 40.00", "+ Wrapping 0.30", "In boxes 40.30"], told[^3..]);
    }

    [Fact]
    public void All_in_cuts_makes_nothing_and_goes_from_the_meat_into_boxes()
    {
        var told = Told(Account(Deer(cuts: 40m, boxes: 39.95m), [Product(0m, 0m, 0m, 0m)], isCut: true, isBoxed: true));

        Assert.Equal(["Boneless meat 40.00", "− Lost in packing 0.05", "In boxes 39.95"], told[^3..]);
    }

    /// <summary>Whatever was weighed, even nonsense: the printed figures lead from each stage to the next.</summary>
    [Property(MaxTest = 1000)]
    public Property Every_step_adds_up() => Prop.ForAll(Figures(), figures =>
    {
        var (weights, products, isBoxed) = figures;
        var at = 0m;
        foreach (var (step, i) in YieldAccounts.Of(weights, products, true, isBoxed, s_hundredth).Way.Select((step, i) => (step, i)))
        {
            var printed = decimal.Parse(step.Printed.Split(' ')[0], System.Globalization.NumberStyles.Number, System.Globalization.CultureInfo.InvariantCulture);
            at = step.Kind switch
            {
                WayKind.Stage => i == 0 || at == printed ? printed : throw new InvalidOperationException($"{step.Name} is {printed}, the steps before lead to {at}."),
                WayKind.Loss => at - printed,
                WayKind.Added => at + printed,
            };
        }
    });

    [Fact]
    public void A_statement_kept_before_boxes_were_in_it_is_still_read()
    {
        // As the first invoices kept it.
        const string kept = """
            {"Stages":["Arrival","Hanging"],"Animals":[{"Animal":"White-tail deer, tag TX-1","Weights":["128.50 lb",""]}],"Together":null,
             "Expected":{"Words":"From 128.50 lb.","Source":"An extension service","Actual":18143695,"ActualPrinted":"40.00 lb","Typical":18143695,
               "UsualLow":null,"UsualHigh":null,"ExtremeLow":null,"ExtremeHigh":null},
             "Verdict":"As usual.","Way":[{"Kind":1,"Name":"As it came in","Weight":58286620,"Printed":"128.50 lb"},{"Kind":1,"Name":"Made, about","Weight":18143695,"Printed":"40.00 lb"}]}
            """;

        var account = YieldAccounts.Kept(kept)!;

        Assert.Equal(Weight.FromPounds(40m), account.Expected!.Actual);
        Assert.Equal([("As it came in", Weight.FromPounds(128.5m)), ("Made, about", Weight.FromPounds(40m))], account.Way.Select(step => (step.Name, step.Weight)));
    }

    [Fact]
    public void A_statement_is_read_as_it_was_kept()
    {
        var account = Account(Deer(lean: 40m, boxes: 40.30m), [Product(0m, 40m, 40m, 40m, finished: 40m)], isCut: true, isBoxed: true);

        var kept = YieldAccounts.Kept(YieldAccounts.Keep(account))!;

        Assert.Equal(account.Way, kept.Way);
        Assert.Equal(account.Expected, kept.Expected);
        Assert.Equal(account.Verdict, kept.Verdict);
    }

    private static YieldAccount Account(JobWeights weights, IReadOnlyList<WayProduct> products, bool isCut, bool isBoxed = false) =>
        YieldAccounts.Of(weights, products, isCut, isBoxed, s_hundredth);

    private static JobWeights Deer(decimal lean = 0m, decimal cuts = 0m, decimal fat = 0m, decimal bone = 0m, decimal discard = 0m, decimal boxes = 0m) => new(
        [new AnimalWeights(1, Species.WhiteTailDeer, "TX-1", ArrivalState.FieldDressed, DateTime.UnixEpoch, OwnersShare.Whole, Pounds(128.5m), null, Pounds(94m))],
        Pounds(lean), Pounds(cuts), Pounds(fat), Pounds(bone), Pounds(discard), Pounds(boxes));

    private static WayProduct Product(decimal fat, decimal block, decimal green, decimal expected, decimal? finished = null) =>
        new(Pounds(fat), Pounds(block), Pounds(green), Pounds(expected), finished is { } came ? Pounds(came) : null, false);

    private static Weight Pounds(decimal pounds) => Weight.FromPounds(pounds);

    private static List<string> Told(YieldAccount account) => account.Way.Select(step => (step.Kind switch
    {
        WayKind.Stage => "",
        WayKind.Loss => "− ",
        WayKind.Added => "+ ",
    }) + step.Name + " " + step.Printed.Replace(" lb", "", StringComparison.Ordinal)).ToList();

    private static Arbitrary<(JobWeights Weights, IReadOnlyList<WayProduct> Products, bool IsBoxed)> Figures()
    {
        var figure = Gen.Frequency((1, Gen.Constant(0m)), (1, Gen.Constant(0.01m)), (1, Gen.Constant(2000m)), (6, Gen.Choose(0, 20_000).Select(count => count / 100m)));
        var weights = from f in Gen.ArrayOf(figure, 6) select Deer(f[0], f[1], f[2], f[3], f[4], f[5]);
        var product =
            from f in Gen.ArrayOf(figure, 4)
            from state in Gen.Choose(0, 2)
            select Product(f[0], f[1], f[1] + f[2], f[3], state == 1 ? f[3] : null) with { IsThrownOut = state == 2 };
        return (from w in weights from p in Gen.ListOf(product) from boxed in Gen.Elements(true, false) select (w, (IReadOnlyList<WayProduct>)[.. p], boxed)).ToArbitrary();
    }
}
