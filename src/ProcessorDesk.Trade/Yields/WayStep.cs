namespace ProcessorDesk.Trade.Yields;

/// <summary>What a step is on the way of the weight.</summary>
public enum WayKind
{
    /// <summary>What stands on the scale here.</summary>
    Stage = 1,

    /// <summary>What went off since the step before.</summary>
    Loss = 2,

    /// <summary>What came in: added pork, spices and water.</summary>
    Added = 3,
}

/// <summary>One step on the way of the weight, from arrival to box.</summary>
/// <param name="Kind">Stage, loss or addition.</param>
/// <param name="Name">"Hanging", "Hide, head and feet", "Added pork".</param>
/// <param name="Weight">Zero or more, losses too.</param>
/// <param name="Printed">The figure as printed.</param>
public sealed record WayStep(WayKind Kind, string Name, Weight Weight, string Printed);
