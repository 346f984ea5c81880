using ProcessorDesk.Trade.Process;
using Xunit;

namespace ProcessorDesk.Trade.Tests.Process;

/// <summary>
/// Source: FSIS Cooking Guideline for Meat and Poultry Products (Revised Appendix A), FSIS-GD-2021-14, Tables 2 and 6, as printed:
/// minutes to 145 °F, seconds from 146 °F on. Each row is held to the second: exactly its time meets, a second less does not.
/// </summary>
public sealed class FsisCookingGuideline2021
{
    [Theory]
    [InlineData(130, 112, 121, 86)]
    [InlineData(131, 89, 97, 69)]
    [InlineData(132, 71, 77, 55)]
    [InlineData(133, 56, 62, 44)]
    [InlineData(134, 45, 47, 35)]
    [InlineData(135, 36, 37, 28)]
    [InlineData(136, 28, 32, 22)]
    [InlineData(137, 23, 24, 18)]
    [InlineData(138, 18, 19, 14)]
    [InlineData(139, 15, 15, 11)]
    [InlineData(140, 12, 12, 9)]
    [InlineData(141, 9, 10, 7)]
    [InlineData(142, 8, 8, 6)]
    [InlineData(143, 6, 6, 5)]
    [InlineData(144, 5, 5, 4)]
    [InlineData(145, 4, 4, 3)]
    public void Table_2_in_minutes(int fahrenheit, int sixFive, int seven, int five) =>
        Table_2_in_seconds(fahrenheit, sixFive * 60, seven * 60, five * 60);

    [Theory]
    [InlineData(146, 169, 182, 130)]
    [InlineData(147, 134, 144, 103)]
    [InlineData(148, 107, 115, 82)]
    [InlineData(149, 85, 91, 65)]
    [InlineData(150, 67, 72, 52)]
    [InlineData(151, 54, 58, 41)]
    [InlineData(152, 43, 46, 33)]
    [InlineData(153, 34, 37, 26)]
    [InlineData(154, 27, 29, 21)]
    [InlineData(155, 22, 23, 17)]
    [InlineData(156, 17, 19, 14)]
    [InlineData(157, 14, 15, 11)]
    public void Table_2_in_seconds(int fahrenheit, int sixFive, int seven, int five)
    {
        RowIsHeldToTheSecond(LethalityKind.Meat65Log, fahrenheit, sixFive);
        RowIsHeldToTheSecond(LethalityKind.Meat7Log, fahrenheit, seven);
        RowIsHeldToTheSecond(LethalityKind.Meat5Log, fahrenheit, five);
    }

    /// <summary>Seconds; the source prints 81.4 min, 54.4 s and so on.</summary>
    [Theory]
    [InlineData(136, "4884", "4248")]
    [InlineData(140, "2100", "2022")]
    [InlineData(145, "780", "828")]
    [InlineData(150, "252", "294")]
    [InlineData(152, "138", "168")]
    [InlineData(155, "54.4", "78")]
    [InlineData(158, "26.9", "40.9")]
    [InlineData(160, "16.9", "26.9")]
    [InlineData(162, "10.5", "17.7")]
    public void Table_6_at_12_percent_fat(int fahrenheit, string chicken, string turkey)
    {
        var (shorter, longer) = (Seconds(chicken), Seconds(turkey));

        RowIsHeldToTheSecond(LethalityKind.Chicken, fahrenheit, shorter);
        RowIsHeldToTheSecond(LethalityKind.Turkey, fahrenheit, longer);
        RowIsHeldToTheSecond(LethalityKind.AnyPoultry, fahrenheit, Math.Max(shorter, longer));
    }

    [Theory]
    [InlineData(LethalityKind.Meat65Log, 158)]
    [InlineData(LethalityKind.Meat7Log, 158)]
    [InlineData(LethalityKind.Meat5Log, 158)]
    [InlineData(LethalityKind.Chicken, 164)]
    [InlineData(LethalityKind.Turkey, 165)]
    [InlineData(LethalityKind.AnyPoultry, 165)]
    public void From_the_last_row_on_reaching_it_is_enough(LethalityKind kind, int fahrenheit)
    {
        var peak = Cook.Minutes((0, 100), (1, fahrenheit), (2, 100));
        var under = Cook.Minutes((0, 100), (1, fahrenheit - 0.01m), (2, 100));

        Assert.Equal((ProcessVerdict.Meets, TimeSpan.Zero), (Lethality.Check(kind, peak).Verdict, Lethality.Check(kind, peak).Allowed));
        Assert.Equal(ProcessVerdict.DoesNotMeet, Lethality.Check(kind, under).Verdict);
        Assert.Equal(ProcessVerdict.Meets, Lethality.Check(kind, [Cook.At(0, fahrenheit)]).Verdict);
    }

    /// <summary>Between the rows of the poultry table the next lower row holds: at 148 °F that of 145.</summary>
    [Fact]
    public void Poultry_between_two_rows_is_held_to_the_lower()
    {
        var check = Lethality.Check(LethalityKind.Chicken, Cook.Held(149.9m, 780));

        Assert.Equal((ProcessVerdict.Meets, 145m), (check.Verdict, check.Row!.At.Fahrenheit));
        Assert.Equal(ProcessVerdict.DoesNotMeet, Lethality.Check(LethalityKind.Chicken, Cook.Held(149.9m, 779)).Verdict);
    }

    [Fact]
    public void At_145_degrees_3_59_does_not_meet_and_4_00_does()
    {
        var under = Lethality.Check(LethalityKind.Meat65Log, Cook.Held(145, 239));
        var over = Lethality.Check(LethalityKind.Meat65Log, Cook.Held(145, 240));

        Assert.Equal((ProcessVerdict.DoesNotMeet, "does not meet"), (under.Verdict, under.Words));
        Assert.Equal((145m, TimeSpan.FromSeconds(239), TimeSpan.FromSeconds(240)), (under.Row!.At.Fahrenheit, under.Found, under.Allowed!.Value));
        Assert.Equal(("3 min 59 s", "at least 4 min"), (under.Findings[0].Found, under.Findings[0].Allowed));
        Assert.Equal((ProcessVerdict.Meets, "meets the table row"), (over.Verdict, over.Words));
        Assert.EndsWith("FSIS-GD-2021-14, Table 2", over.Source, StringComparison.Ordinal);
    }

    [Fact]
    public void At_150_degrees_60_s_meets_5_log_and_not_6_5_log()
    {
        var readings = Cook.Held(150, 60);

        Assert.Equal(ProcessVerdict.Meets, Lethality.Check(LethalityKind.Meat5Log, readings).Verdict);
        Assert.Equal(ProcessVerdict.DoesNotMeet, Lethality.Check(LethalityKind.Meat65Log, readings).Verdict);
    }

    [Fact]
    public void At_157_9_degrees_14_s_counts_for_the_row_of_157()
    {
        var check = Lethality.Check(LethalityKind.Meat65Log, Cook.Held(157.9m, 14));

        Assert.Equal((ProcessVerdict.Meets, 157m), (check.Verdict, check.Row!.At.Fahrenheit));
    }

    [Fact]
    public void At_129_9_degrees_5_hours_have_no_row()
    {
        var check = Lethality.Check(LethalityKind.Meat65Log, Cook.Held(129.9m, 5 * 3600));

        Assert.Equal((ProcessVerdict.DoesNotMeet, null, TimeSpan.Zero), (check.Verdict, check.Row, check.Found));
    }

    /// <summary>Source: the same, p. 24.</summary>
    [Theory]
    [InlineData(360, ProcessVerdict.Meets)]
    [InlineData(361, ProcessVerdict.DoesNotMeet)]
    public void A_come_up_of_6_01_is_flagged(int minutes, ProcessVerdict comeUp)
    {
        (decimal, decimal)[] slow = [.. Enumerable.Range(1, 35).Select(i => (i * 10m, 60m))];

        var check = Lethality.Check(LethalityKind.Meat65Log, Cook.Minutes([(0, 50), .. slow, (minutes, 130), (minutes + 10, 165)]));

        Assert.Equal((ProcessVerdict.Meets, comeUp), (check.Verdict, check.ComeUp.Verdict));
        Assert.Equal(TimeSpan.FromMinutes(minutes), check.ComeUp.Found);
        Assert.Equal(comeUp == ProcessVerdict.DoesNotMeet, check.Findings.Any(finding => finding.Found == "6 h 1 min" && finding.Allowed == "at most 6 h"));
    }

    /// <summary>Source: the same; dried product is outside the table.</summary>
    [Fact]
    public void Jerky_is_never_met_by_the_table()
    {
        var check = Lethality.Check(LethalityKind.DriedFirst, Cook.Held(165, 3600));

        Assert.Equal((ProcessVerdict.NotShown, null, "not shown by the record"), (check.Verdict, check.Table, check.Words));
        Assert.Contains("outside the cooking table", check.Findings[0].Text, StringComparison.Ordinal);
    }

    /// <summary>Source: the same, p. 20: the limit is set above the table by the thermometer's accuracy.</summary>
    [Fact]
    public void The_thermometers_accuracy_is_taken_off()
    {
        var degree = Temperature.FromFahrenheit(1m);

        Assert.Equal(144m, Lethality.Check(LethalityKind.Meat65Log, Cook.Held(145, 300), degree).Row!.At.Fahrenheit);
        Assert.Equal(ProcessVerdict.DoesNotMeet, Lethality.Check(LethalityKind.Meat65Log, Cook.Held(145, 299), degree).Verdict);
        Assert.Equal(ProcessVerdict.Meets, Lethality.Check(LethalityKind.Meat65Log, [Cook.At(0, 159)], degree).Verdict);
        Assert.NotEqual(ProcessVerdict.Meets, Lethality.Check(LethalityKind.Meat65Log, [Cook.At(0, 158.99m)], degree).Verdict);
    }

    private static void RowIsHeldToTheSecond(LethalityKind kind, int fahrenheit, decimal seconds)
    {
        var met = Lethality.Check(kind, Cook.Held(fahrenheit, seconds));
        var missed = Lethality.Check(kind, Cook.Held(fahrenheit, seconds - 1));

        Assert.Equal((ProcessVerdict.Meets, fahrenheit), (met.Verdict, (int)met.Row!.At.Fahrenheit));
        Assert.Equal((decimal)met.Allowed!.Value.Ticks, seconds * TimeSpan.TicksPerSecond);
        Assert.Equal(ProcessVerdict.DoesNotMeet, missed.Verdict);
    }

    private static decimal Seconds(string figure) => decimal.Parse(figure, System.Globalization.CultureInfo.InvariantCulture);
}
