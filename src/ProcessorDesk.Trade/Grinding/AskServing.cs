namespace ProcessorDesk.Trade.Grinding;

/// <summary>How much lean one ask gets from what is left, and why not more. Everything is counted in scale divisions.</summary>
internal static class AskServing
{
    /// <param name="all">All the measured lean.</param>
    /// <param name="left">What the asks before left of it.</param>
    public static (long Lean, IReadOnlyList<string> Reasons) Serve(GrindAsk ask, long all, long left, ScaleDivision division)
    {
        var greenPerLean = ask.Blend.GreenPerLean;
        var step = KeyedFigure.InDivisions(ask.Blend.Step, division);
        var wanted = WantedGreen(ask, all, left, division);
        var (green, lean) = Stepped(wanted);
        if (wanted.IsZero)
            return (0, [ask.Kind == AskKind.Rest || all == 0 ? "No lean was left." : "Nothing was asked for."]);

        var reasons = new List<string>();
        if (lean > left)
        {
            reasons.Add(TooLittleLeft(ask, wanted / greenPerLean, left, division));
            if (left == 0)
                return (0, reasons);
            wanted = Ratio.Of(left, 1) * greenPerLean;
            (green, lean) = Stepped(wanted);
        }

        if (Dropped(ask.Blend, wanted, green, lean, division) is { } why)
        {
            reasons.Add(why);
            return (0, reasons);
        }

        if (green < wanted)
            reasons.Add($"Mix rounded down from {Print(wanted, division)} to {Print(green, division)}: it is made in steps of {division.Print(ask.Blend.Step)}.");
        return (lean, reasons);

        (Ratio Green, long Lean) Stepped(Ratio target)
        {
            var stepped = step.IsZero ? target : Ratio.Of((target / step).Down(), 1) * step;
            return (stepped, (stepped / greenPerLean).Nearest());
        }
    }

    private static Ratio WantedGreen(GrindAsk ask, long all, long left, ScaleDivision division) => ask.Kind switch
    {
        AskKind.OwnLean => KeyedFigure.InDivisions(ask.Amount, division) * ask.Blend.GreenPerLean,
        AskKind.Finished => KeyedFigure.InDivisions(ask.Amount, division) / (Ratio.One - ask.Blend.Loss.ToRatio()),
        AskKind.Percent => Ratio.Of(all, 1) * ask.Percent.ToRatio() * ask.Blend.GreenPerLean,
        AskKind.Rest => Ratio.Of(left, 1) * ask.Blend.GreenPerLean,
    };

    private static string? Dropped(GrindBlend blend, Ratio wanted, Ratio green, long lean, ScaleDivision division)
    {
        if (green.IsZero)
            return $"Dropped: {Print(wanted, division)} of mix is less than one step of {division.Print(blend.Step)}.";
        if (green >= KeyedFigure.InDivisions(blend.SmallestRun, division))
            return lean == 0 ? $"Dropped: its lean is less than a scale of {division} shows." : null;
        var (mix, smallest) = (Print(green, division), division.Print(blend.SmallestRun));
        return mix == smallest
            ? $"Dropped: the mix comes just short of the smallest run of {smallest}."
            : $"Dropped: {mix} of mix is under the smallest run of {smallest}.";
    }

    private static string TooLittleLeft(GrindAsk ask, Ratio lean, long left, ScaleDivision division)
    {
        var need = Print(lean, division);
        var asked = ask.Kind switch
        {
            AskKind.OwnLean => need,
            AskKind.Finished => $"{division.Print(ask.Amount)} finished, which takes {need} of lean",
            AskKind.Percent => $"{ask.Percent.Print()}, which is {need} of lean",
            AskKind.Rest => "the rest",
        };
        var remains = left == 0 ? "no lean" : $"{division.Print(division.FromCount(left))} of lean";
        return $"Asked for {asked}; {remains} was left.";
    }

    private static string Print(Ratio count, ScaleDivision division) => division.Print(division.FromCount(count.Nearest()));
}
