namespace ProcessorDesk.Records;

/// <summary>The words of tracing.</summary>
public static partial class Wording
{
    public static string Of(TracedKind kind) => kind switch
    {
        TracedKind.Animal => "Animal",
        TracedKind.Job => "Job",
        TracedKind.Lug => "Lug",
        TracedKind.Batch => "Batch",
        TracedKind.Box => "Box",
        TracedKind.IngredientLot => "Ingredient lot",
    };

    public static string Of(CallOutcome outcome) => outcome switch
    {
        CallOutcome.Told => "Told",
        CallOutcome.MessageLeft => "Message left",
        CallOutcome.NoAnswer => "No answer",
        CallOutcome.WrongNumber => "Wrong number",
    };
}
