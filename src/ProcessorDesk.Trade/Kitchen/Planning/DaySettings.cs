namespace ProcessorDesk.Trade.Kitchen.Planning;

/// <summary>What the kitchen can do in a day; the shop's own figures, all green weights.</summary>
/// <param name="MixerCapacity">At least one division.</param>
/// <param name="SmallestFill">The least that the mixer mixes well; zero for none, at most the capacity.</param>
/// <param name="Smokehouse">What it holds in a day; null where none is set.</param>
/// <param name="Day">What the hands get done in a day; null where none is set.</param>
/// <param name="Division">Of the bench scale.</param>
/// <param name="Minutes">Of cleaning; <see cref="CleaningMinutes.Usual"/> where the shop has no own.</param>
public sealed record DaySettings(
    Weight MixerCapacity, Weight SmallestFill, Weight? Smokehouse, Weight? Day, ScaleDivision Division, CleaningMinutes Minutes);
