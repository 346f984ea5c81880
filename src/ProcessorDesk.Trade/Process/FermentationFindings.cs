using System.Globalization;

namespace ProcessorDesk.Trade.Process;

/// <summary>The words that go with a verdict on a fermentation's record.</summary>
internal static class FermentationFindings
{
    public static IEnumerable<Finding> Of(ProcessVerdict verdict, decimal degreeHours, DegreeHourLimit? limit, bool sour)
    {
        var found = degreeHours.ToString("#,0.#", CultureInfo.InvariantCulture) + " degree-hours";
        if (verdict == ProcessVerdict.NotShown && limit is null)
            yield return new Finding("", "There are no temperatures. Write down the chamber's from the time the product goes in.", "none", "", DegreeHourLimit.All[0].Source);
        if (limit is null)
            yield break;
        var allowed = string.Create(CultureInfo.InvariantCulture, $"at most {limit.Most:#,0}");
        if (verdict == ProcessVerdict.DoesNotMeet)
            yield return Say($"Do not release it. Until it is sour enough it took {found} or more; {limit.Name} it may take {allowed}.");
        if (verdict == ProcessVerdict.NotShown && !sour)
            yield return Say($"The record does not show {DegreeHourLimit.Target.Print()} or below yet. Read the acidity again.");
        if (verdict == ProcessVerdict.NotShown && sour)
            yield return Say("From the start to the moment it is sour enough the temperatures have a gap, or do not reach. Add what was read and not written down.");

        Finding Say(string text) => new("", text, found, allowed, limit.Source);
    }
}
