namespace ProcessorDesk.Trade.Process;

/// <summary>The words that go with a verdict on a chilling record.</summary>
internal static class CoolingFindings
{
    public static Finding NoReadings(CoolingOption option) =>
        new("", "There are no readings. Write down the temperature of the warmest piece while it chills.", "none", "", option.Source);

    public static Finding Off(CoolingOption option) => new(
        "", $"Cooling {option.Name} is off until the shop has confirmed it against the published guideline. Use option 1 or 2.", "", "", option.Source);

    public static IEnumerable<Finding> Of(CoolingStepCheck check, CoolingOption option)
    {
        var step = check.Step;
        var found = ProcessTime.Print(check.Found);
        if (check.Verdict == ProcessVerdict.DoesNotMeet)
            yield return Say($"Do not release it. The warmest probe took {found} or more from {step.Print()}.");
        if (check.Verdict == ProcessVerdict.NotShown && step.AtMost is null)
            yield return Say($"The record does not show {step.To.WholeFahrenheitDown} °F. It has to be there before it is packed.");
        if (check.Verdict == ProcessVerdict.NotShown && step.AtMost is not null)
            yield return Say($"The record does not show {step.Print()}. Add what was read and not written down, or go on reading until it is there.");

        Finding Say(string text) =>
            new("", text, found, step.AtMost is { } most ? "at most " + ProcessTime.Print(most) : "", option.Source);
    }
}
