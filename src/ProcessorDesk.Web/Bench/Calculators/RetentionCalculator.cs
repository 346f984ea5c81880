using System.Globalization;
using ProcessorDesk.Trade.Deadlines;

namespace ProcessorDesk.Web.Bench.Calculators;

/// <summary>How long a job's records are kept.</summary>
public static class RetentionCalculator
{
    private static readonly Field<RetentionRule> s_rules = Fields.Choice(
        "rule", "Rules that apply",
        ("federal", RetentionRule.Federal.Name, RetentionRule.Federal), ("texasCustom", RetentionRule.TexasCustom.Name, RetentionRule.TexasCustom),
        ("southDakotaGame", RetentionRule.SouthDakotaGame.Name, RetentionRule.SouthDakotaGame), ("colorado", RetentionRule.Colorado.Name, RetentionRule.Colorado)) with
    { Repeats = true };

    private static readonly Field<DateOnly> s_received = Day("received", "Received");
    private static readonly Field<DateOnly> s_processed = Day("processed", "Processed");
    private static readonly Field<DateOnly> s_handedOver = Day("handedOver", "Handed over");

    public static Calculator Calculator { get; } = new(
        "retention", "Keeping records", "Until when the records of a job are kept: by the latest of the rules that apply to the shop.",
        [s_rules, s_received, s_processed, s_handedOver],
        [
            Figure.Text("keepUntil", "Keep until", "last day the record has to be there, as 2027-12-31"),
            Figure.Text("rule", "By the rule", "the one that keeps it longest"),
            new("each", "Each rule", FigureKind.Rows, "every rule asked for, with its own last day")
            {
                Columns = [Figure.Text("rule", "Rule"), Figure.Text("keepUntil", "Keep until"), Figure.Source],
            },
        ],
        ["Which rules apply to a shop is for the shop and its authority to say."],
        "rule=federal&rule=texasCustom&processed=2025-11-15&handedOver=2025-11-15",
        Work);

    private static Field<DateOnly> Day(string name, string label) => new(name, label, "a day as 2025-11-15", text =>
        DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) && day.Year is >= 1900 and <= 9000
            ? Take.Good<DateOnly>(day)
            : Take.Bad<DateOnly>("Give a day as year, month and day, for example 2025-11-15."))
    {
        IsRequired = false,
        Example = "2025-11-15",
        Hint = "Needed where a rule counts from it",
    };

    private static Outcome Work(Entries entries)
    {
        var rules = entries.AllOf(s_rules).Distinct().ToList();
        var days = new JobDays(entries.Maybe(s_received), entries.Maybe(s_processed), entries.Maybe(s_handedOver));
        if (rules.Find(rule => rule.Until(days) is null) is { } open)
            return Refusal.Bad(CountsFrom(open).Name, $"{open.Name} counts from this day. Give it.");
        var retention = Retention.Of(rules, days);
        return new Answer([.. retention.Each.Select(one => $"{one.Rule.Name}: {Start(one.Rule, days)} and {one.Rule.Length.Print()} = {Print(one.Until)}"), $"The latest holds: {Print(retention.Until)}"])
        {
            Published = [.. rules.Select(rule => ($"{rule.Name}: {rule.Length.Print()}", rule.Source))],
            Figures =
            {
                ["keepUntil"] = Print(retention.Until),
                ["rule"] = retention.Rule!.Name,
                ["each"] = retention.Each.Select(one => new Dictionary<string, object?> { ["rule"] = one.Rule.Name, ["keepUntil"] = Print(one.Until), ["source"] = one.Rule.Source }).ToList(),
            },
        };
    }

    private static Field<DateOnly> CountsFrom(RetentionRule rule) => rule.Start switch
    {
        RetentionStart.EndOfHandOverYear or RetentionStart.HandedOver => s_handedOver,
        RetentionStart.Received => s_received,
        RetentionStart.Processed => s_processed,
    };

    private static string Start(RetentionRule rule, JobDays days) => rule.Start switch
    {
        RetentionStart.EndOfHandOverYear => "31 December of the year of " + Print(days.HandedOver),
        RetentionStart.Received => Print(days.Received),
        RetentionStart.Processed => Print(days.Processed),
        RetentionStart.HandedOver => Print(days.HandedOver),
    };

    private static string Print(DateOnly? day) => day!.Value.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
