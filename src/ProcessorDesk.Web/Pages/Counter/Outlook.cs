using Microsoft.AspNetCore.Mvc.ModelBinding;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Grinding;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Counter;

/// <summary>What a drop-off will probably give, whether the asks fit into it, and what it will probably cost.</summary>
/// <param name="Typical">The asks over the typical lean; null where nothing is foretold.</param>
/// <param name="Low">The asks over the lean at the low end of the range.</param>
public sealed record Outlook(
    LeanOutlook Lean, GrindSplit? Typical, GrindSplit? Low, PriceOutlook Price, IReadOnlyList<string> Cured, IReadOnlyList<string> Unread, ScaleDivision Division)
{
    public IReadOnlyList<CounterCaution> Cautions { get; private init; } = [];

    /// <summary>What the price list asks as a deposit; null where it asks none.</summary>
    public string? UsualDeposit { get; private init; }

    /// <summary>Asks that get less than asked, or nothing, with why; at the typical lean.</summary>
    public IEnumerable<(string Name, string Why)> CutShort => Reasons(Typical);

    public IEnumerable<(string Name, string Why)> CutShortWhenLow => Reasons(Low);

    public static Outlook Of(
        RecordsContext records, ShopDay day, OrderInput order, IReadOnlyList<(AnimalInput Typed, Ratio Share)> animals, int? priceListId = null)
    {
        var unread = new ModelStateDictionary();
        var read = order.Read(unread, day.Today, animals.Select(animal => animal.Typed), "");
        var lean = LeanOutlook.Of(animals, read.Cuts);
        var division = day.Settings.BenchDivision;
        IReadOnlyList<GrindAsk> asks = unread.Keys.Any(key => key.Contains("Kind", StringComparison.Ordinal)) ? [] : [.. read.Asks.Select(ask => ask.ToTrade())];
        var plain = order.Offered.Single(formula => formula.Product.IsPlainGround);
        var rest = GrindAsk.OfRest(plain.Product.Name, plain.ToBlend());
        GrindSplit? Split(Weight? weight) => weight is { } some ? Splitting.Split(division.Round(some), asks, rest, division) : null;
        var (typical, low, high) = (Split(lean.Typical), Split(lean.Low), Split(lean.High));
        var lists = records.PriceLists.AsNoTracking();
        var prices = (priceListId is { } id ? lists.Where(list => list.Id == id) : lists.InForceOn(day.Today)).SelectMany(list => list.Prices).ToList();
        var price = PriceOutlook.Of(prices, day.Settings, animals, typical is null ? null : (low ?? typical, high ?? typical), order.Offered);
        var problems = unread.Where(field => field.Key.Contains(".Asks[", StringComparison.Ordinal))
            .SelectMany(field => field.Value!.Errors.Select(error => error.ErrorMessage));
        string[] cured = [.. read.Asks.Where(ask => ask.Formula.Product.Cured).Select(ask => ask.Formula.Product.Name).Distinct()];
        return new Outlook(lean, typical, low, price, cured, [.. problems], division)
        {
            Cautions = [.. CounterCautions.For([.. animals.Select(animal => animal.Typed)])],
            UsualDeposit = prices.FirstOrDefault(one => one.For == PriceFor.Deposit)?.Each.Print(),
        };
    }

    private static IEnumerable<(string Name, string Why)> Reasons(GrindSplit? split) =>
        from given in split?.Allotments ?? []
        from why in given.Reasons
        where given.Ask.Kind != AskKind.Rest || given.Lean.IsZero
        select (given.Ask.Name, why);
}
