using ProcessorDesk.Web.Bench.Calculators;

namespace ProcessorDesk.Web.Bench;

/// <summary>The calculators that anyone on the network may use, and where they stand.</summary>
public static class BenchList
{
    public const string Root = "/bench";

    /// <summary>Where the OpenAPI document is served.</summary>
    public const string Document = Root + "/openapi.json";

    /// <summary>In the order of the bench's own page.</summary>
    public static IReadOnlyList<Calculator> All { get; } =
    [
        YieldCalculator.Calculator,
        GirthCalculator.Calculator,
        SplitCalculator.Calculator,
        BlendCalculator.Calculator,
        LeastCostCalculator.Calculator,
        CureCalculator.Calculator,
        FormulaCalculator.Calculator,
        LethalityCalculator.Calculator,
        CoolingCalculator.Calculator,
        DegreeHoursCalculator.Calculator,
        YieldTestCalculator.Calculator,
        YieldGradeCalculator.Calculator,
        ChillLossCalculator.Calculator,
        RetentionCalculator.Calculator,
        TicketCalculator.Calculator,
    ];

    public static Calculator? Find(string path) => All.FirstOrDefault(one => string.Equals(one.Path, path, StringComparison.OrdinalIgnoreCase));
}
