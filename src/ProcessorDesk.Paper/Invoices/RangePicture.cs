using ProcessorDesk.Paper.Drawing;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Yields;

namespace ProcessorDesk.Paper;

/// <summary>A yield on its published range, readable in grey.</summary>
internal static class RangePicture
{
    /// <summary>The published range as a bar, what came out as a mark on it.</summary>
    public static void Draw(Sheet sheet, YieldRange range)
    {
        sheet.Need(58);
        Weight[] all = [range.Actual, range.Typical, .. Given(range.UsualLow, range.UsualHigh, range.ExtremeLow, range.ExtremeHigh)];
        double low = all.Min(weight => weight.Milligrams), high = all.Max(weight => weight.Milligrams);
        var pad = Math.Max(1, (high - low) * 0.1);
        double X(Weight weight) => sheet.Left + 20 + (sheet.Width - 40) * (weight.Milligrams - low + pad) / (high - low + 2 * pad);
        var (axis, canvas) = (sheet.Y + 26, sheet.Canvas);
        if (range is { ExtremeLow: { } extremeLow, ExtremeHigh: { } extremeHigh })
            canvas.Frame(new Box(X(extremeLow), axis - 6, X(extremeHigh) - X(extremeLow), 12), 1);
        if (range is { UsualLow: { } usualLow, UsualHigh: { } usualHigh })
            canvas.Fill(new Box(X(usualLow), axis - 6, X(usualHigh) - X(usualLow), 12), 0.72);
        canvas.Line(X(range.Typical), axis - 9, X(range.Typical), axis + 9, 1.5);
        canvas.Circle(X(range.Actual), axis, 5);
        var text = "yours " + range.ActualPrinted;
        var textX = Math.Clamp(X(range.Actual) - canvas.Measure(text, Lettering.Strong) / 2, sheet.Left, sheet.Right - canvas.Measure(text, Lettering.Strong));
        canvas.Text(text, Lettering.Strong, textX, axis - 13);
        canvas.Text("dot: what came out · line: typical · grey: usual range · frame: extreme range", Lettering.Label, sheet.Left, axis + 21);
        sheet.Space(56);
    }

    private static IEnumerable<Weight> Given(params Weight?[] weights) =>
        weights.Where(weight => weight is not null).Select(weight => weight!.Value);
}
