namespace ProcessorDesk.Records;

/// <summary>How an ingredient's amount is written in a formula. The numbers are stored.</summary>
public enum IngredientBasis
{
    PercentOfMeatBlock = 1,
    OuncesPerHundredPounds = 2,
}
