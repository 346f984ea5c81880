using static ProcessorDesk.Trade.Formulas.ProductClass;
using static ProcessorDesk.Trade.Formulas.ProductPart;

namespace ProcessorDesk.Trade.Formulas;

/// <summary>The published figures for sausage and ground meat, each once. They bind product for sale; for custom work they are a guide.</summary>
public static class ProductLimits
{
    private const string Sausage = "9 CFR 319.140";

    /// <summary>All of them, by class.</summary>
    public static IReadOnlyList<ProductLimit> All { get; } =
    [
        Most(GroundBeef, Fat, 30m, "9 CFR 319.15"),
        Most(FreshPorkSausage, Fat, 50m, "9 CFR 319.141"),
        .. Uncooked(FreshPorkSausage),
        Most(FreshBeefSausage, Fat, 30m, "9 CFR 319.142"),
        .. Uncooked(FreshBeefSausage),
        Most(BreakfastSausage, Fat, 50m, "9 CFR 319.143"),
        .. Uncooked(BreakfastSausage),
        .. Binding(BreakfastSausage, Sausage),
        Most(ItalianSausage, Fat, 35m, "9 CFR 319.145"),
        Most(ItalianSausage, Meat, 85m, "9 CFR 319.145") with { IsLeast = true },
        .. Uncooked(ItalianSausage),
        .. Uncooked(UncookedSausage),
        .. Binding(UncookedSausage, Sausage),
        Most(CookedSausage, AddedWater, 10m, Sausage),
        .. Binding(CookedSausage, Sausage),
        Most(CookedSausage, Phosphate, 0.5m, Sausage),
        Most(Frankfurter, Fat, 30m, "9 CFR 319.180"),
        Most(Frankfurter, FatAndAddedWater, 40m, "9 CFR 319.180"),
        .. Binding(Frankfurter, "9 CFR 319.180"),
        Most(Frankfurter, Phosphate, 0.5m, Sausage),
    ];

    // Water is 3 % of everything in the mix, the water with it; phosphates are for cooked sausage alone.
    private static IEnumerable<ProductLimit> Uncooked(ProductClass kind) =>
        [Most(kind, AddedWater, 3m, Sausage) with { IsOfMix = true }, Most(kind, Phosphate, 0m, Sausage)];

    private static IEnumerable<ProductLimit> Binding(ProductClass kind, string source) =>
        [Most(kind, Binders, 3.5m, source), Most(kind, IsolatedSoyProtein, 2m, source), Most(kind, SodiumCaseinate, 2m, source)];

    private static ProductLimit Most(ProductClass kind, ProductPart part, decimal percent, string source) =>
        new($"{kind}.{part}", kind, part, Ratio.FromDecimal(percent) / Ratio.Of(100, 1), false, false, source, 'A');
}
