namespace ProcessorDesk.Records;

/// <summary>What a price is for. The numbers are stored.</summary>
public enum PriceFor
{
    /// <summary>Taking in and cutting an animal of a species, in an arrival state or any.</summary>
    Animal = 1,

    /// <summary>Making a product.</summary>
    Product = 2,

    /// <summary>Fat bought in and added.</summary>
    AddedFat = 3,

    /// <summary>Something asked for besides: caping, vacuum wrap, rush.</summary>
    Extra = 4,

    /// <summary>What is asked as a deposit at drop-off.</summary>
    Deposit = 5,
}
