using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Grinding;

namespace ProcessorDesk.Seasons.Tests.Generating;

/// <summary>What a season finds in the shop: its settings, prices, hands, formulas and lugs.</summary>
internal sealed class ShopFloor
{
    private readonly Dictionary<StaffRole, List<int>> _staff;
    private readonly Dictionary<string, FormulaVersion> _formulas;
    private readonly Stack<Lug> _free;

    public ShopFloor(RecordsContext records)
    {
        Settings = records.Shop.AsNoTracking().Single();
        PriceLists = [.. records.PriceLists.AsNoTracking().Include(list => list.Prices).OrderBy(list => list.StartsOn)];
        _staff = records.Staff.AsNoTracking().AsEnumerable().GroupBy(staff => staff.Role).ToDictionary(role => role.Key, role => role.Select(staff => staff.Id).ToList());
        _formulas = records.FormulaVersions.AsNoTrackingWithIdentityResolution().Newest().ToDictionary(formula => formula.Product.Name);
        Ingredients = [.. records.Ingredients.AsNoTracking().OrderBy(ingredient => ingredient.Id)];
        PlainGround = new PlannedAsk(_formulas.Values.Single(formula => formula.Product.IsPlainGround), AskKind.Rest, Weight.Zero, Proportion.Zero);
        _free = new(records.Lugs.AsNoTracking().OrderByDescending(lug => lug.Number));
        LastHash = records.Journal.AsNoTracking().OrderByDescending(entry => entry.Id).Select(entry => entry.Hash).First();
    }

    public ShopSettings Settings { get; }

    public IReadOnlyList<PriceList> PriceLists { get; }

    public IReadOnlyList<Ingredient> Ingredients { get; }

    public PlannedAsk PlainGround { get; }

    /// <summary>Of the journal, before the seasons.</summary>
    public string LastHash { get; }

    public FormulaVersion FormulaOf(string product) => _formulas[product];

    public Hand Hand(StaffRole role, string station, Dice dice) => new(dice.Of(_staff[role]), station);

    /// <exception cref="InvalidOperationException">All lugs are full.</exception>
    public Lug TakeLug() => _free.Pop();

    public void GiveBack(Lug lug) => _free.Push(lug);
}
