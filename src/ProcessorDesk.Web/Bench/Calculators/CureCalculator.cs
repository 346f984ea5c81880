using ProcessorDesk.Trade.Curing;

namespace ProcessorDesk.Web.Bench.Calculators;

/// <summary>Cure by every method, both ways: what a dose comes to, and the most that meets.</summary>
public static class CureCalculator
{
    private const decimal MostOunces = Fields.MostPounds * UnitFactors.OuncesPerPound;
    private const decimal MostGrams = Fields.MostPounds * UnitFactors.MilligramsPerPound / UnitFactors.MilligramsPerGram;

    private static readonly Field<CureMethod> s_method = Fields.Choice(
        "method", "Method",
        ("comminuted", "Ground or chopped", CureMethod.Comminuted), ("pumped", "Pumped or massaged", CureMethod.Pumped),
        ("immersionPickup", "Immersed, by pick-up", CureMethod.ImmersionPickup), ("immersionEquilibrium", "Immersed for long, by equilibrium", CureMethod.ImmersionEquilibrium),
        ("dry", "Rubbed on dry", CureMethod.Dry), ("baconPumped", "Bacon, pumped", CureMethod.BaconPumped),
        ("baconImmersion", "Bacon, immersed", CureMethod.BaconImmersion), ("baconDry", "Bacon, rubbed on dry", CureMethod.BaconDry));

    private static readonly Field<decimal> s_meat = Optional("meatLb", "Green weight of the meat", "lb", Fields.MostPounds, "100", "Not needed where it is pumped or picks up");
    private static readonly Field<decimal> s_ounces = Optional("cureOz", "Cure, in ounces", "oz", MostOunces, "4", "Ounces or grams, not both; neither for the most alone");
    private static readonly Field<decimal> s_grams = Optional("cureG", "Cure, in grams", "g", MostGrams, "113.4", "");

    private static readonly Field<Proportion> s_nitrite = Fields.Percent("nitritePct", "Nitrite in the cure") with { Hint = "As its maker states it. It is never assumed" };
    private static readonly Field<Proportion> s_nitrate = Fields.Percent("nitratePct", "Nitrate in the cure") with { Default = "0", Example = "4" };
    private static readonly Field<Proportion> s_pump = Fields.Percent("pumpPct", "Pump or pick-up") with { IsRequired = false, Example = "10", Hint = "Of the green weight; bacon immersed without it is worked by equilibrium" };
    private static readonly Field<decimal> s_pickle = Optional("pickleLb", "Whole pickle", "lb", Fields.MostPounds, "100", "Weighed, the cure included; where there is a pickle");
    private static readonly Field<ScaleDivision> s_scale = Fields.SmallScale("smallScaleG");

    private static readonly Field<CuringSalt> s_salt = Fields.Choice(
        "salt", "The nitrite is", ("sodium", "Sodium nitrite", CuringSalt.Sodium), ("potassium", "Potassium nitrite", CuringSalt.Potassium)) with
    { Default = "sodium", Hint = "Matters for bacon alone" };

    private static readonly Field<decimal> s_accelerator =
        Optional("acceleratorPpm", "Accelerator", "ppm", 1_000_000m, "550", "Sodium ascorbate or erythorbate; pumped bacon needs it. Blank is none");

    public static Calculator Calculator { get; } = new(
        "cure", "Cure", "Ingoing nitrite and nitrate of a weighed cure against the published limits, and the most of it that meets them.",
        [s_method, s_meat, s_ounces, s_grams, s_nitrite, s_nitrate, s_pump, s_pickle, s_scale, s_salt, s_accelerator],
        [
            Figure.Number("nitritePpm", "Nitrite", "ppm", "ingoing; null where no dose is given") with { MayBeNull = true },
            Figure.Number("nitratePpm", "Nitrate", "ppm", "ingoing; null where no dose is given") with { MayBeNull = true },
            Figure.Number("nitriteLimitPpm", "Nitrite at most", "ppm", "exactly as published; null where no dose is given") with { MayBeNull = true },
            Figure.Number("nitrateLimitPpm", "Nitrate at most", "ppm", "null where none is allowed, and where no dose is given") with { MayBeNull = true },
            new("meets", "Meets", FigureKind.Flag, "there is a cure, and nitrite, nitrate and bacon's accelerator are within their limits together; null where no dose is given") { MayBeNull = true },
            new("belowMinimum", "Below the minimum", FigureKind.Flag, "less nitrite than product that is kept cold must have, or than pumped bacon is prescribed; null where no dose is given") { MayBeNull = true },
            Figure.Number("maxCureG", "The most that meets", "g", "of this cure alone, rounded down to the small scale"),
            Figure.Findings,
            Figure.Source,
        ],
        [.. CuringCautions.All.Select(caution => caution.Text)],
        "method=comminuted&meatLb=100&cureOz=4&nitritePct=6.25",
        Work);

    private static Field<decimal> Optional(string name, string label, string unit, decimal most, string example, string hint) =>
        Fields.Number(name, label, unit, 0m, most, example) with { IsRequired = false, Hint = hint };

    private static Outcome Work(Entries entries)
    {
        var (nitrite, nitrate) = (entries.Of(s_nitrite), entries.Of(s_nitrate));
        if (entries.Maybe(s_ounces) is not null && entries.Maybe(s_grams) is not null)
            return Refusal.Bad(s_grams.Name, "Give the cure in ounces or in grams, not in both.");
        CureAmount? dose = (entries.Maybe(s_ounces), entries.Maybe(s_grams)) switch
        {
            ({ } ounces, _) => CureAmount.Of("cure", ounces, WeightUnit.Ounce, nitrite, nitrate),
            (_, { } grams) => CureAmount.Of("cure", grams, WeightUnit.Gram, nitrite, nitrate),
            _ => null,
        };
        var question = new CureQuestion(entries.Of(s_method), [])
        {
            Meat = Keyed(entries.Maybe(s_meat)),
            Pickle = Keyed(entries.Maybe(s_pickle)),
            Pump = entries.Maybe(s_pump),
            Salt = entries.Of(s_salt),
            Accelerator = entries.Maybe(s_accelerator) is { } ppm ? new CureAccelerator(AcceleratorKind.Salt, ppm) : null,
        };
        List<Finding> problems = [.. CureStrength.Check(nitrite, nitrate), .. question.Problems()];
        if (problems.Count > 0)
            return Refusal.Of(StatusCodes.Status400BadRequest, problems, FieldOf);
        var most = CureDose.Most(question, nitrite, nitrate, entries.Of(s_scale));
        return dose is null
            ? CureAnswer.OfMost(CureRule.For(question.Method, question.Salt), most)
            : CureAnswer.Of(IngoingCure.Check(question with { Cures = [dose] }), most);
    }

    private static KeyedWeight? Keyed(decimal? pounds) => pounds is { } figure ? KeyedWeight.Of(figure, WeightUnit.Pound) : null;

    private static Field FieldOf(string field) => field switch
    {
        "MeatBlock" => s_meat,
        "Pickle" => s_pickle,
        "Pump" => s_pump,
        "Nitrate" => s_nitrate,
        _ => s_nitrite,
    };
}
