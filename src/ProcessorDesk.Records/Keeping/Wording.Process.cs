using ProcessorDesk.Trade.Process;

namespace ProcessorDesk.Records;

/// <content>Of the process record.</content>
public static partial class Wording
{
    public static string Of(BatchLineKind kind) => kind switch
    {
        BatchLineKind.Step => "Step",
        BatchLineKind.Reading => "Reading",
        BatchLineKind.Finished => "Finished weight",
        BatchLineKind.Ticket => "Ticket",
        BatchLineKind.Share => "Finished share",
        BatchLineKind.Mixed => "Mixed",
        BatchLineKind.StuffedPieces => "Pieces stuffed",
        BatchLineKind.LeftInMachines => "Left in the machines",
        BatchLineKind.Drip => "Thaw and drip",
        BatchLineKind.CureAgain => "Cure weighed again",
    };

    public static string Of(DispositionKind kind) => kind switch
    {
        DispositionKind.Reworked => "Reworked by written guidance",
        DispositionKind.ExpertsLetter => "Expert's letter",
        DispositionKind.OwnersTold => "Owners told",
    };

    public static string Of(LethalityKind kind) => kind switch
    {
        LethalityKind.Meat65Log => "Meat, 6.5-log",
        LethalityKind.Meat7Log => "Meat, 7-log",
        LethalityKind.Meat5Log => "Meat, 5-log",
        LethalityKind.Chicken => "Chicken, 7-log",
        LethalityKind.Turkey => "Turkey, 7-log",
        LethalityKind.AnyPoultry => "Other, mixed or unknown poultry, 7-log",
        LethalityKind.DriedFirst => "Dried before it is cooked: outside the tables",
    };
}
