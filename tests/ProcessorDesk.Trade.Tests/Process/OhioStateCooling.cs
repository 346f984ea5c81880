using ProcessorDesk.Trade.Process;
using Xunit;
using static ProcessorDesk.Trade.Tests.Process.Cook;

namespace ProcessorDesk.Trade.Tests.Process;

/// <summary>
/// Source: Ohio State University meat science. Option 1: 130 to 80 °F in 1.5 h and 80 to 40 in 5 h. Option 2: 120 to 80 in 1 h, 80 to
/// 55 in 5 h, 40 before packing. Option 3 (older text, mark B): 130 to 80 in 5 h, to 40 in 10 h more, cured product only.
/// </summary>
public sealed class OhioStateCooling
{
    [Theory]
    [InlineData(90, 300, ProcessVerdict.Meets, ProcessVerdict.Meets)]
    [InlineData(91, 300, ProcessVerdict.DoesNotMeet, ProcessVerdict.Meets)]
    [InlineData(90, 301, ProcessVerdict.Meets, ProcessVerdict.DoesNotMeet)]
    public void Option_1(int toEighty, int toForty, ProcessVerdict first, ProcessVerdict second)
    {
        var check = Cooling.Check(CoolingOptions.One, Falling((0, 130), (toEighty, 80), (toEighty + toForty, 40)));

        Assert.Equal([first, second], check.Steps.Select(step => step.Verdict));
        Assert.Equal([TimeSpan.FromMinutes(toEighty), TimeSpan.FromMinutes(toForty)], check.Steps.Select(step => step.Found));
        Assert.Equal(first < second ? first : second, check.Verdict);
    }

    [Theory]
    [InlineData(60, 300, 900, ProcessVerdict.Meets)]
    [InlineData(61, 300, 900, ProcessVerdict.DoesNotMeet)]
    [InlineData(60, 301, 900, ProcessVerdict.DoesNotMeet)]
    public void Option_2(int toEighty, int toFiftyFive, int toForty, ProcessVerdict expected)
    {
        var readings = Falling((0, 120), (toEighty, 80), (toEighty + toFiftyFive, 55), (toEighty + toFiftyFive + toForty, 40));

        Assert.Equal(expected, Cooling.Check(CoolingOptions.Two, readings).Verdict);
    }

    [Fact]
    public void Option_2_wants_40_degrees_before_packing()
    {
        var check = Cooling.Check(CoolingOptions.Two, Falling((0, 120), (60, 80), (360, 55), (400, 41)));

        Assert.Equal([ProcessVerdict.Meets, ProcessVerdict.Meets, ProcessVerdict.NotShown], check.Steps.Select(step => step.Verdict));
        Assert.Equal("not shown by the record", check.Words);
        Assert.Equal(ProcessVerdict.Meets, check.OfTimedSteps);
        Assert.Contains("does not show 40 °F", Assert.Single(check.Findings).Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(300, 600, ProcessVerdict.Meets)]
    [InlineData(301, 600, ProcessVerdict.DoesNotMeet)]
    [InlineData(300, 601, ProcessVerdict.DoesNotMeet)]
    public void Option_3_is_off_until_the_shop_confirms_it(int toEighty, int toForty, ProcessVerdict confirmed)
    {
        var readings = Falling((0, 130), (toEighty, 80), (toEighty + toForty, 40));

        Assert.Equal(confirmed, Cooling.Check(CoolingOptions.Three, readings, confirmed: true).Verdict);
        Assert.Equal(ProcessVerdict.NotShown, Cooling.Check(CoolingOptions.Three, readings).Verdict);
        Assert.Contains("off until", Assert.Single(Cooling.Check(CoolingOptions.Three, readings).Findings).Text, StringComparison.Ordinal);
        Assert.Equal([CoolingOptions.Three], CoolingOptions.All.Where(option => option.OnlyCured || option.OffUntilConfirmed));
    }

    /// <summary>Straight lines between the points, with an entry every ten minutes along them.</summary>
    private static List<ProcessReading> Falling(params (int Minute, int Fahrenheit)[] points)
    {
        List<ProcessReading> readings = [At(0, points[0].Fahrenheit)];
        foreach (var (before, after) in points.Zip(points.Skip(1)))
        {
            for (var minute = before.Minute + 10; minute < after.Minute; minute += 10)
            {
                var exact = before.Fahrenheit + (decimal)(after.Fahrenheit - before.Fahrenheit) * (minute - before.Minute) / (after.Minute - before.Minute);
                readings.Add(At(minute * 60, exact));
            }

            readings.Add(At(after.Minute * 60, after.Fahrenheit));
        }

        return readings;
    }
}
