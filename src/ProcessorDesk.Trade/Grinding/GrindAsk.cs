namespace ProcessorDesk.Trade.Grinding;

/// <summary>What an owner wants made of the grind.</summary>
/// <param name="Name">The product, as the owner reads it.</param>
/// <param name="Amount">Lean for <see cref="AskKind.OwnLean"/>, product for <see cref="AskKind.Finished"/>; not read otherwise.</param>
/// <param name="Percent">Part of all the lean for <see cref="AskKind.Percent"/>; not read otherwise.</param>
public sealed record GrindAsk(string Name, AskKind Kind, Weight Amount, Proportion Percent, GrindBlend Blend)
{
    public static GrindAsk OfLean(string name, Weight lean, GrindBlend blend) =>
        new(name, AskKind.OwnLean, lean, Proportion.Zero, blend);

    public static GrindAsk OfFinished(string name, Weight finished, GrindBlend blend) =>
        new(name, AskKind.Finished, finished, Proportion.Zero, blend);

    public static GrindAsk OfPercent(string name, Proportion percent, GrindBlend blend) =>
        new(name, AskKind.Percent, Weight.Zero, percent, blend);

    public static GrindAsk OfRest(string name, GrindBlend blend) =>
        new(name, AskKind.Rest, Weight.Zero, Proportion.Zero, blend);
}
