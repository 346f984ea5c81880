using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Pricing;

namespace ProcessorDesk.Records;

/// <summary>What a job is charged: its animals, its products, the fat added, the extras, at the list it was taken at.</summary>
public sealed class JobCharges
{
    private readonly List<JobCharge> _charges = [];
    private readonly List<string> _notes = [];
    private readonly IReadOnlyList<Price> _list;
    private readonly IReadOnlyList<Price> _today;
    private readonly ShopSettings _shop;

    private JobCharges(IReadOnlyList<Price> list, IReadOnlyList<Price> today, ShopSettings shop) =>
        (_list, _today, _shop) = (list, today, shop);

    /// <summary>Each line with what it charges.</summary>
    public IReadOnlyList<JobCharge> All => _charges;

    public IReadOnlyList<ChargeLine> Lines => [.. _charges.Select(charge => charge.Line)];

    /// <summary>What could not be charged, or was charged at another list, in words.</summary>
    public IReadOnlyList<string> Notes => _notes;

    /// <param name="list">The prices the job was taken at.</param>
    /// <param name="today">The prices in force now, for what the list lacks.</param>
    /// <param name="animals">The job's animals.</param>
    /// <param name="products">What is made of the trim, in the order of the invoice; empty where nothing is agreed or foretold.</param>
    /// <param name="extras">Extras and how many of each.</param>
    public static JobCharges Of(
        IReadOnlyList<Price> list,
        IReadOnlyList<Price> today,
        ShopSettings shop,
        IReadOnlyList<ChargedAnimal> animals,
        IReadOnlyList<ChargedProduct> products,
        IReadOnlyList<(Price Price, int Count)> extras)
    {
        var charges = new JobCharges(list, today, shop);
        foreach (var animal in animals)
            charges.AddAnimal(animal);
        foreach (var product in products.Where(one => one.Lean.IsPositive))
            charges.AddProduct(product);
        charges.AddFat(shop.BenchDivision.Sum(products.Select(one => one.AddedFat)));
        foreach (var (price, count) in extras.Where(extra => extra.Count > 0))
            charges.Add(PriceFor.Extra, null, Charges.PerPiece(price.Text, count, price.Each, charges.TaxOf(price)));
        return charges;
    }

    private void Add(PriceFor @for, int? ofId, ChargeLine line) => _charges.Add(new JobCharge(@for, ofId, line));

    private Proportion? TaxOf(Price price) => price.Taxed && !_shop.TaxRate.IsZero ? _shop.TaxRate : null;

    private void AddAnimal(ChargedAnimal animal)
    {
        var name = animal.Name;
        var prices = _list.Where(price => price.For == PriceFor.Animal && price.Species == animal.Species
            && (price.ArrivalState is null || price.ArrivalState == animal.ArrivalState)).ToList();
        if (prices.Count == 0)
            _notes.Add($"{name}: the price list has no charge for it.");
        var exact = prices.Any(price => price.ArrivalState is not null);
        foreach (var price in prices.Where(price => !exact || price.ArrivalState is not null || price.IsByPound))
        {
            if (!price.IsByPound)
                Add(PriceFor.Animal, animal.AnimalId, Charges.Part($"{price.Text}: {name}", animal.Share, price.Each, TaxOf(price)));
            else if (animal.HangingOf(_shop.BenchDivision) is { } hanging)
                Add(PriceFor.Animal, animal.AnimalId, Charges.PerPound($"{price.Text}: {name}", hanging, _shop.BenchDivision, price.Rate, TaxOf(price)));
            else
                _notes.Add($"{name}: charged by hanging weight, which is not known yet.");
        }
    }

    private void AddProduct(ChargedProduct product)
    {
        var name = product.Name;
        if (DatedPrices.Find(_list, _today, one => one.For == PriceFor.Product && one.ProductId == product.ProductId) is not { } found)
        {
            _notes.Add($"{name}: no price list has it, so it is not charged.");
            Add(PriceFor.Product, product.AllotmentId, Charges.Flat($"{name}, not charged", Money.Zero, null));
            return;
        }

        NoteToday(name, found);
        var (price, text) = (found.Price, found.Say(name));
        Add(PriceFor.Product, product.AllotmentId, WeightFor(price.Basis, product) is { } weight
            ? Charges.PerPound($"{text}, {Measure(price.Basis)} weight", weight, _shop.BenchDivision, price.Rate, TaxOf(price))
            : Charges.Flat(text, price.Each, TaxOf(price)));
    }

    private void AddFat(Weight fat)
    {
        if (!fat.IsPositive)
            return;
        if (DatedPrices.Find(_list, _today, one => one.For == PriceFor.AddedFat) is not { } found)
        {
            _notes.Add("Added fat: no price list has a charge for it.");
            return;
        }

        NoteToday("Added fat", found);
        var price = found.Price;
        Add(PriceFor.AddedFat, null, Charges.PerPound(found.Say(price.Text), fat, _shop.BenchDivision, price.Rate, TaxOf(price)));
    }

    private void NoteToday(string name, PriceFound<Price> found)
    {
        if (found.IsTodays)
            _notes.Add($"{name}: the list this job was taken at lacks it; it is charged at today's price.");
    }

    private static Weight? WeightFor(ChargeBasis basis, ChargedProduct product) => basis switch
    {
        ChargeBasis.Each => null,
        ChargeBasis.HangingPound => null,
        ChargeBasis.LeanPound => product.Lean,
        ChargeBasis.GreenPound => product.Green,
        ChargeBasis.FinishedPound => product.Finished,
        ChargeBasis.AddedFatPound => product.AddedFat,
    };

    private static string Measure(ChargeBasis basis) => basis switch
    {
        ChargeBasis.Each => "whole",
        ChargeBasis.HangingPound => "hanging",
        ChargeBasis.LeanPound => "lean",
        ChargeBasis.GreenPound => "green",
        ChargeBasis.FinishedPound => "finished",
        ChargeBasis.AddedFatPound => "added fat",
    };
}
