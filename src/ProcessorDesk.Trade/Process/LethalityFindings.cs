namespace ProcessorDesk.Trade.Process;

/// <summary>The words that go with a verdict on a cooking record.</summary>
internal static class LethalityFindings
{
    public static Finding DriedFirst { get; } = new(
        "",
        "Jerky, and product dried before it is cooked, is outside the cooking table. It needs the shop's own written, validated process.",
        "", "", LethalityTables.Guideline);

    public static Finding NoReadings(LethalityTable table) =>
        new("", "There are no readings. Write down the temperature of the coldest piece while it cooks.", "none", "", table.Source);

    public static IEnumerable<Finding> Of(
        ProcessVerdict verdict, LethalityKind kind, LethalityTable table, LethalityRow? row, TimeSpan found, Temperature accuracy)
    {
        var asFound = row is null ? NeverThere(table, accuracy) : AtRow(row, found, accuracy);
        if (verdict == ProcessVerdict.DoesNotMeet)
            yield return Say("Do not release it. " + asFound);
        if (verdict == ProcessVerdict.NotShown)
            yield return Say($"The readings leave out too much to tell. {asFound} Add what was read and not written down.");
        if (kind == LethalityKind.Meat5Log)
            yield return new Finding("", "5-log on product that must be kept cold needs written support of its own.", "", "", table.Source);

        Finding Say(string text) => new(
            "", text, row is null ? "" : ProcessTime.Print(found), row is null ? "" : "at least " + ProcessTime.Print(row.Dwell), table.Source);
    }

    private static string AtRow(LethalityRow row, TimeSpan found, Temperature accuracy) =>
        $"The coldest probe is shown at or above {row.At.Print()}{Less(accuracy)} for {ProcessTime.Print(found)}; the row asks for {ProcessTime.Print(row.Dwell)}.";

    private static string NeverThere(LethalityTable table, Temperature accuracy) =>
        $"The coldest probe is shown for no time at {table.Rows[0].At.Print()}{Less(accuracy)}, where the table begins.";

    private static string Less(Temperature accuracy) =>
        accuracy.HundredthsFahrenheit == 0 ? "" : $" (with {accuracy.Print()} taken off for the thermometer)";
}
