namespace ProcessorDesk.Trade.Curing;

/// <summary>The most of one cure that meets.</summary>
/// <param name="Amount">On the small scale's division: it meets, and one division more does not. Zero where none may go in.</param>
/// <param name="Decides">The limit that decides; null where none does.</param>
/// <param name="Why">What decides, as a sentence for a person.</param>
/// <param name="Notes">What to look at again, such as a strength that reads like a fraction.</param>
/// <param name="Working">The arithmetic, a line a step, as a hand would write it; empty where no limit decides or none may go in.</param>
public sealed record MostCure(Weight Amount, CureLimit? Decides, string Why, IReadOnlyList<Finding> Notes, IReadOnlyList<string> Working)
{
    internal static MostCure None(string why, CureLimit? decides = null) => new(Weight.Zero, decides, why, [], []);
}
