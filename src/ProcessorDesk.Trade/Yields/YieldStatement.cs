namespace ProcessorDesk.Trade.Yields;

/// <summary>What an animal or a job gave, held against its forecast. It warns and never blocks.</summary>
/// <remarks>Figures are compared as printed at the shop's division, so that the page never contradicts itself.</remarks>
public sealed record YieldStatement
{
    private YieldStatement(Weight from, Weight actual, YieldForecast? forecast, ScaleDivision division)
    {
        (From, Actual, Forecast) = (from, actual, forecast);
        Ratio = from.IsPositive ? Trade.Ratio.Of(actual, from) : null;
        Verdict = Judge(actual, forecast, division);
        Came = $"{division.Print(actual)} came of {division.Print(from)}" + (Ratio is { } ratio ? $", {ratio.PrintPercent()}." : ".");
        Standing = forecast is null
            ? "No yield is published for this; the shop's own records will show what is usual."
            : Judgement(division);
    }

    /// <summary>The weight it started from.</summary>
    public Weight From { get; }

    /// <summary>What was weighed out of it.</summary>
    public Weight Actual { get; }

    /// <summary>Actual over starting weight, exactly; null where nothing was weighed at the start.</summary>
    public Ratio? Ratio { get; }

    public YieldForecast? Forecast { get; }

    public YieldVerdict Verdict { get; }

    /// <summary>"92.75 lb came of 224.50 lb, 41.3 %."</summary>
    public string Came { get; }

    /// <summary>How it lies to what is published, in a sentence.</summary>
    public string Standing { get; }

    /// <summary>The same for whoever takes the meat home, who can look into no records.</summary>
    public string StandingForOwner => Verdict != YieldVerdict.Outside ? Standing
        : Actual < Forecast!.Low!.Value ? "This is below the published range, as heavy damage or trimming will do. Ask the shop about it."
        : "This is above the published range.";

    /// <summary>Sentences for the owner: what came, what was expected, how the two lie, and who published it.</summary>
    public string Words => Forecast is null
        ? $"{Came} {Standing}"
        : $"{Came} Expected: {Forecast.Print()}. {Standing} Source: {Forecast.Source}.";

    /// <summary>Only a result past the published extreme range is flagged.</summary>
    public bool IsFlagged => Verdict == YieldVerdict.Outside;

    /// <param name="from">Zero or more.</param>
    /// <param name="actual">Zero or more.</param>
    /// <param name="forecast">Null where no ratio is published.</param>
    /// <param name="division">The division the figures are shown at.</param>
    public static YieldStatement Of(Weight from, Weight actual, YieldForecast? forecast, ScaleDivision division)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(from.Milligrams);
        ArgumentOutOfRangeException.ThrowIfNegative(actual.Milligrams);
        return new YieldStatement(from, actual, forecast, division);
    }

    private static YieldVerdict Judge(Weight actual, YieldForecast? forecast, ScaleDivision division)
    {
        if (forecast is not { Low: { } low, High: { } high })
            return YieldVerdict.NoRange;
        if (forecast is { UsualLow: { } usualLow, UsualHigh: { } usualHigh } && Inside(usualLow, usualHigh))
            return YieldVerdict.InsideUsual;
        if (forecast.ExtremeLow is null)
            return YieldVerdict.BeyondUsual;
        return Inside(low, high) ? YieldVerdict.InsideExtreme : YieldVerdict.Outside;

        bool Inside(Weight least, Weight most) =>
            division.CountOf(actual) >= division.CountOf(least) && division.CountOf(actual) <= division.CountOf(most);
    }

    private string Judgement(ScaleDivision division) => Verdict switch
    {
        YieldVerdict.InsideUsual => "This is inside the usual range.",
        YieldVerdict.InsideExtreme when Forecast is { ExtremeLow: not null, UsualLow: not null } =>
            "This is beyond the usual range but inside the extreme one, as shot damage, trimming and build will do.",
        YieldVerdict.InsideExtreme => "This is inside the published range.",
        YieldVerdict.Outside when division.CountOf(Actual) < division.CountOf(Forecast!.Low!.Value) =>
            "This is below the published range: look for a weight not booked, and tell the owner about damage or heavy trimming.",
        YieldVerdict.Outside => "This is above the published range: look for a weight booked twice or to the wrong animal.",
        YieldVerdict.BeyondUsual => "This is beyond the usual range; how far it may stray at the extreme is not published.",
        YieldVerdict.NoRange => "No range is published for it.",
    };
}
