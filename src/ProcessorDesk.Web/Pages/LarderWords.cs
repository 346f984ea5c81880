using System.Globalization;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Web.Pages;

/// <summary>Amounts of the larder in the unit they are bought in.</summary>
public static class LarderWords
{
    /// <summary>"49.8 lb", "0.045 lb": to two decimals, under one to three, and no more zeros than it takes.</summary>
    public static string Amount(Weight weight, WeightUnit unit)
    {
        var figure = weight.In(unit);
        return $"{decimal.Round(figure, Math.Abs(figure) < 1m ? 3 : 2, MidpointRounding.AwayFromZero).ToString("#,0.###", CultureInfo.InvariantCulture)} {UnitFactors.Symbol(unit)}";
    }

    /// <summary>"1 piece", "240 pieces".</summary>
    public static string Pieces(int count) => count == 1 ? "1 piece" : $"{count.ToString("#,0", CultureInfo.InvariantCulture)} pieces";

    /// <summary>By weight or by the piece, as the ingredient goes.</summary>
    public static string Of(Ingredient ingredient, Weight weight, int pieces) => ingredient.GoesByPiece ? Pieces(pieces) : Amount(weight, ingredient.BoughtIn);

    /// <summary>"$0.32 / lb", "$0.15 each", or empty where nobody said.</summary>
    public static string Cost(Ingredient ingredient) => ingredient.Cost is { } cost ? ingredient.GoesByPiece ? cost.Print() + " each" : cost.Print() + " / lb" : "";

    /// <summary>"6.25 % nitrite, 1 % nitrate"; empty where there is neither.</summary>
    public static string Strength(Proportion nitrite, Proportion nitrate) => string.Join(", ", new[]
    {
        nitrite.IsZero ? null : nitrite.Print() + " nitrite",
        nitrate.IsZero ? null : nitrate.Print() + " nitrate",
    }.OfType<string>());
}
