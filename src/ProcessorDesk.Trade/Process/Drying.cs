namespace ProcessorDesk.Trade.Process;

/// <summary>Loss of weight in drying against the shop's own target. The target is the shop's written process; nothing is published here.</summary>
public static class Drying
{
    /// <summary>Compared exactly on the weights.</summary>
    /// <param name="green">Before drying, above zero; null where it was not weighed.</param>
    /// <param name="dried">Now; null where it was not weighed.</param>
    /// <param name="target">The part of the green weight that has to be gone, below 100 %.</param>
    public static DryingCheck Check(Weight? green, Weight? dried, Proportion target)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(target, Proportion.Whole);
        if (green is not { } before || dried is not { } now)
            return new DryingCheck(ProcessVerdict.NotShown, null, target, [Say("A weight is missing. Weigh the product before it dries, and again now.", "")]);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(before.Milligrams, nameof(green));
        ArgumentOutOfRangeException.ThrowIfNegative(now.Milligrams, nameof(dried));
        var loss = Ratio.Of(before - now, before);
        return loss >= target.ToRatio()
            ? new DryingCheck(ProcessVerdict.Meets, loss, target, [])
            : new DryingCheck(ProcessVerdict.DoesNotMeet, loss, target, [Say("It has not lost enough weight. Go on drying, and weigh it again.", DryingCheck.Print(loss))]);

        Finding Say(string text, string found) => new("", text, found, "at least " + target.Print());
    }

    /// <summary>The most it may weigh when it is dry enough, down to the milligram.</summary>
    public static Weight DownTo(Weight green, Proportion target) => (Ratio.One - target.ToRatio()).TimesDown(green);
}
