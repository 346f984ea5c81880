using ProcessorDesk.Records;
using ProcessorDesk.Trade;

namespace ProcessorDesk.SeedDemo;

/// <summary>The made-up shop's prices: last season's list and the one in force.</summary>
internal static class DemoPrices
{
    public static void Post(RecordsContext records, DateOnly lastSeason, DateOnly thisSeason)
    {
        records.PriceLists.Add(new PriceList("Last season", lastSeason, Prices(records, 95)));
        records.PriceLists.Add(new PriceList("This season", thisSeason, Prices(records, 100)));
    }

    /// <param name="percent">Of this season's figures.</param>
    private static List<Price> Prices(RecordsContext records, int percent)
    {
        int Cents(int cents) => cents * percent / 100;
        Price Animal(Species species, int cents, ArrivalState? state = null) =>
            new(PriceFor.Animal, state == ArrivalState.Skinned ? "Cutting, skinned" : "Skinning and cutting", ChargeBasis.Each, Cents(cents), taxed: false, species, state);
        Price ByHanging(Species species, int cents) =>
            new(PriceFor.Animal, "Cut and wrap", ChargeBasis.HangingPound, Cents(cents), taxed: false, species);
        Price Kill(Species species, int cents) => new(PriceFor.Animal, "Slaughter", ChargeBasis.Each, Cents(cents), taxed: false, species);
        Price Product(string name, ChargeBasis basis, int cents) =>
            new(PriceFor.Product, name, basis, Cents(cents), taxed: true, productId: DemoProducts.IdOf(records, name));
        return
        [
            Animal(Species.WhiteTailDeer, 11_500),
            Animal(Species.WhiteTailDeer, 9_000, ArrivalState.Skinned),
            Animal(Species.MuleDeer, 12_500),
            Animal(Species.Elk, 24_000),
            Kill(Species.Hog, 6_000), ByHanging(Species.Hog, 95),
            Kill(Species.Beef, 11_000), ByHanging(Species.Beef, 92),
            Kill(Species.Lamb, 5_500), ByHanging(Species.Lamb, 130),
            Product(DemoProducts.Ring, ChargeBasis.GreenPound, 375),
            Product(DemoProducts.Summer, ChargeBasis.FinishedPound, 425),
            Product(DemoProducts.Hot, ChargeBasis.FinishedPound, 250),
            Product(DemoProducts.Breakfast, ChargeBasis.FinishedPound, 240),
            Product(DemoProducts.BeefFat, ChargeBasis.FinishedPound, 95),
            new(PriceFor.Product, DemoProducts.Plain, ChargeBasis.LeanPound, Cents(60), taxed: false, productId: DemoProducts.IdOf(records, DemoProducts.Plain)),
            new(PriceFor.AddedFat, "Fat bought in and added", ChargeBasis.AddedFatPound, Cents(195), taxed: true),
            new(PriceFor.Extra, "Caping", ChargeBasis.Each, Cents(4_000), taxed: false),
            new(PriceFor.Extra, "Rush order", ChargeBasis.Each, Cents(2_500), taxed: false),
            new(PriceFor.Deposit, "Deposit", ChargeBasis.Each, Cents(5_000), taxed: false),
        ];
    }
}
