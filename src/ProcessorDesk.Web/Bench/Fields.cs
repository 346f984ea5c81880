namespace ProcessorDesk.Web.Bench;

/// <summary>The kinds of field there are on the bench.</summary>
public static class Fields
{
    /// <summary>Most pounds that are taken, of anything.</summary>
    public const decimal MostPounds = 100_000m;

    private const int LongestName = 60;

    private static readonly string s_pounds = $"a plain decimal, above 0 to {PlainNumber.Print(MostPounds)}";

    public static Field<Weight> Pounds(string name, string label) => new(name, label, s_pounds, AboveZero) { Unit = "lb", IsNumber = true, Example = "100" };

    /// <summary>A figure between two ends, both in.</summary>
    public static Field<decimal> Number(string name, string label, string unit, decimal least, decimal most, string example) =>
        new(name, label, $"a plain decimal, {PlainNumber.Print(least)} to {PlainNumber.Print(most)}", text => PlainNumber.Read(text, least, most))
        {
            Unit = unit,
            IsNumber = true,
            Example = example,
        };

    /// <summary>A percent of a whole, written as 6.25.</summary>
    public static Field<Proportion> Percent(string name, string label) =>
        new(name, label, "percent as a plain decimal, 0 to 100, to four decimals", Percent) { Unit = "%", IsNumber = true, Example = "6.25" };

    /// <summary>One of several codes.</summary>
    public static Field<T> Choice<T>(string name, string label, params (string Code, string Words, T Value)[] choices)
    {
        var codes = string.Join(", ", choices.Select(choice => choice.Code));
        return new(name, label, codes, text =>
        {
            var at = Array.FindIndex(choices, choice => choice.Code == text);
            return at < 0 ? Take.Bad<T>($"Choose one: {codes}.") : Take.Good<T>(choices[at].Value);
        })
        {
            Choices = [.. choices.Select(choice => new Choice(choice.Code, choice.Words))],
            Example = choices[0].Code,
        };
    }

    /// <summary>A scale's division, in grams.</summary>
    public static Field<ScaleDivision> SmallScale(string name) =>
        new(name, "Small scale shows", "a plain decimal, 0.001 or 0.002 to 1,000, to six decimals", text => PlainNumber.Read(text, 0.001m, 1000m).Then(step =>
            decimal.Round(step, 6) == step && step is 0.001m or >= 0.002m
                ? Take.Good<ScaleDivision>(ScaleDivision.Of(WeightUnit.Gram, step))
                : Take.Bad<ScaleDivision>("Give a division a scale can show, for example 0.1.")))
        {
            Unit = "g",
            IsNumber = true,
            Default = "0.1",
            Example = "0.1",
        };

    /// <summary>Repeated entries of several parts with semicolons between.</summary>
    /// <param name="form">The parts: "minutes;°F".</param>
    public static Field<T> Parts<T>(string name, string label, string form, string example, Func<string[], Taken<T>> parse)
    {
        var count = form.Split(';').Length;
        return new(name, label, $"`{form}`", text => text.Split(';', StringSplitOptions.TrimEntries) is { } parts && parts.Length == count
            ? parse(parts)
            : Take.Bad<T>(FormattableString.Invariant($"Give {count} parts with semicolons between: {form}, for example {example}.")))
        {
            Repeats = true,
            Example = example,
        };
    }

    /// <summary>A weight in pounds, zero too.</summary>
    public static Taken<Weight> ZeroOrMore(string text) =>
        PlainNumber.Read(text, 0m, MostPounds).Then(pounds => Take.Good<Weight>(Weight.FromPounds(pounds)));

    /// <summary>A weight in pounds that is not nothing.</summary>
    public static Taken<Weight> AboveZero(string text) =>
        ZeroOrMore(text).Then(weight => weight.IsZero ? Take.Bad<Weight>("Give a weight above zero.") : Take.Good<Weight>(weight));

    /// <summary>A name that stands in an answer.</summary>
    public static Taken<string> Name(string text) =>
        text.Length is 0 or > LongestName ? Take.Bad<string>($"Give it a name, no longer than {LongestName} letters.") : Take.Good<string>(text);

    /// <summary>A percent, 0 to 100, to four decimals.</summary>
    public static Taken<Proportion> Percent(string text) =>
        PlainNumber.Read(text, 0m, 100m).Then(_ => Take.Of(ProportionText.Parse(text)));
}
