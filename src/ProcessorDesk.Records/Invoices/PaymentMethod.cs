namespace ProcessorDesk.Records;

/// <summary>The numbers are stored. No card numbers are ever kept.</summary>
public enum PaymentMethod
{
    Cash = 1,
    Check = 2,
    Card = 3,
    Other = 4,
}
