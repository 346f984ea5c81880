using ProcessorDesk.Trade.Yields;

namespace ProcessorDesk.Web.Bench.Calculators;

/// <summary>The yield grade of a beef carcass.</summary>
public static class YieldGradeCalculator
{
    private static readonly Field<decimal> s_fat = Fields.Number("fatIn", "Fat over the ribeye", "in", 0m, 20m, "0.4") with { Hint = "At the 12th rib, adjusted as a grader does" };
    private static readonly Field<Proportion> s_inside = Fields.Percent("kphPct", "Kidney, pelvic and heart fat") with { Example = "2.5" };
    private static readonly Field<Weight> s_hot = Fields.Pounds("hotLb", "Hot carcass") with { Example = "800" };
    private static readonly Field<decimal> s_ribeye = Fields.Number("ribeyeIn2", "Ribeye", "in²", 0.01m, 1000m, "16") with { Hint = "Area at the 12th rib" };

    public static Calculator Calculator { get; } = new(
        "yield-grade", "Yield grade", "How much closely trimmed, boneless meat a beef carcass gives, from 1, the most, to 5.",
        [s_fat, s_inside, s_hot, s_ribeye],
        [Figure.Number("calculated", "By the equation", "", "unrounded"), Figure.Number("grade", "Yield grade", "", "whole, 1 to 5: the fraction is dropped"), Figure.Source],
        ["Only a federal grader gives an official grade."],
        "fatIn=0.4&kphPct=2.5&hotLb=800&ribeyeIn2=16",
        Work);

    private static Answer Work(Entries entries)
    {
        var grade = YieldGrade.Of(entries.Of(s_fat), entries.Of(s_inside), entries.Of(s_hot), entries.Of(s_ribeye));
        return new Answer(grade.Working)
        {
            Published = [("2.50 + 2.50 × fat in + 0.20 × inside fat % + 0.0038 × hot carcass lb − 0.32 × ribeye in²", YieldGrade.Source)],
            Figures = { ["calculated"] = grade.Calculated.ToDecimal(), ["grade"] = (decimal)grade.Grade, ["source"] = YieldGrade.Source },
        };
    }
}
