using ProcessorDesk.Trade.Grinding;

namespace ProcessorDesk.SeedDemo;

/// <summary>What an owner of the season wants of the trim.</summary>
/// <param name="Amount">Pounds, or percent; nothing where it takes the rest.</param>
internal sealed record DemoAsk(string Product, AskKind Kind, decimal Amount = 0m)
{
    /// <summary>So many pounds of the owner's own lean in it.</summary>
    public static DemoAsk OwnLean(string product, decimal pounds) => new(product, AskKind.OwnLean, pounds);

    /// <summary>So many pounds of it finished.</summary>
    public static DemoAsk Finished(string product, decimal pounds) => new(product, AskKind.Finished, pounds);

    public static DemoAsk Percent(string product, decimal percent) => new(product, AskKind.Percent, percent);

    public static DemoAsk Rest(string product) => new(product, AskKind.Rest);
}
