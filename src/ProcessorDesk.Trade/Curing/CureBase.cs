using System.Globalization;

namespace ProcessorDesk.Trade.Curing;

/// <summary>What the agent of a cure is divided by: green meat, pickle with its pump, or both together.</summary>
/// <param name="Milligrams">Above zero, exactly as keyed.</param>
/// <param name="Factor">The pump or pick-up as a part; one where there is none.</param>
/// <param name="Steps">How a hand writes it behind the agent: "÷ 16,197.8 g of meat block".</param>
/// <param name="StepsBack">How a hand writes it behind a limit: "× 16,197.8 g of meat block".</param>
/// <param name="MoreOf">What is too little of where there is too much cure.</param>
internal sealed record CureBase(Ratio Milligrams, Ratio Factor, string Steps, string StepsBack, string MoreOf)
{
    /// <summary>Agent to base for each milligram of the agent.</summary>
    public Ratio Share => Factor / Milligrams;

    /// <param name="question">One without problems.</param>
    public static CureBase Of(CureQuestion question) => question.Method switch
    {
        CureMethod.Comminuted => OnMeat(question.Meat!, "meat block", "meat"),
        CureMethod.Dry or CureMethod.BaconDry => OnMeat(question.Meat!, "green weight", "meat"),
        CureMethod.Pumped or CureMethod.BaconPumped => OnPickle(question.Pickle!, question.Pump!.Value, "pump"),
        CureMethod.ImmersionPickup => OnPickle(question.Pickle!, question.Pump!.Value, "pick-up"),
        CureMethod.ImmersionEquilibrium => OnBoth(question.Meat!, question.Pickle!),
        CureMethod.BaconImmersion => question.Pump is { } pickUp ? OnPickle(question.Pickle!, pickUp, "pick-up") : OnBoth(question.Meat!, question.Pickle!),
    };

    private static CureBase OnMeat(KeyedWeight meat, string name, string moreOf) =>
        new(meat.Milligrams, Ratio.One, $"÷ {Grams(meat)} of {name}", $"× {Grams(meat)} of {name}", moreOf);

    private static CureBase OnPickle(KeyedWeight pickle, Proportion pump, string name) =>
        new(
            pickle.Milligrams,
            pump.ToRatio(),
            $"× {pump.Print()} {name} ÷ {Grams(pickle)} of pickle",
            $"× {Grams(pickle)} of pickle ÷ {pump.Print()} {name}",
            "pickle");

    private static CureBase OnBoth(KeyedWeight meat, KeyedWeight pickle) =>
        new(
            meat.Milligrams + pickle.Milligrams,
            Ratio.One,
            $"÷ ({Grams(meat)} of meat + {Grams(pickle)} of pickle)",
            $"× ({Grams(meat)} of meat + {Grams(pickle)} of pickle)",
            "pickle");

    private static string Grams(KeyedWeight weight) => weight.Kept.Grams.ToString("N1", CultureInfo.InvariantCulture) + " g";
}
