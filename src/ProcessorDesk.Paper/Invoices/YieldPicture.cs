using ProcessorDesk.Paper.Drawing;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Yields;

namespace ProcessorDesk.Paper;

/// <summary>The two pictures of a yield statement, readable in grey.</summary>
internal static class YieldPicture
{
    private const double BarHeight = 15;
    private const double RowHeight = 22;
    private static readonly Lettering Stage = new(10, Bold: true);
    private static readonly Lettering Change = new(9.5);

    /// <summary>Bars from arrival to box: stages filled, losses hatched, additions dotted, each named and with its figure.</summary>
    public static void Way(Sheet sheet, IReadOnlyList<WayStep> steps)
    {
        if (steps.Count == 0)
            return;
        sheet.Heading("Where the weight went", RowHeight * Math.Min(steps.Count, 16));
        var (names, figures) = (150.0, 74.0);
        var left = sheet.Left + names + 10;
        var width = sheet.Width - names - figures - 20;
        foreach (var bar in WayOfWeight.Bars(steps))
        {
            sheet.Need(RowHeight);
            var lettering = bar.Step.Kind == WayKind.Stage ? Stage : Change;
            var baseline = sheet.Y + RowHeight / 2 + lettering.CapHeight / 2;
            var indent = bar.Step.Kind == WayKind.Stage ? 0 : 10;
            sheet.Canvas.Text(sheet.Canvas.Shorten(bar.Step.Name, lettering, names - indent), lettering, sheet.Left + indent, baseline);
            sheet.Canvas.TextEndingAt(Sign(bar.Step.Kind) + bar.Step.Printed, lettering, sheet.Right, baseline);
            Bar(sheet.Canvas, bar.Step.Kind, new Box(left + bar.From * width, sheet.Y + (RowHeight - BarHeight) / 2, Math.Max(0.75, (bar.To - bar.From) * width), BarHeight));
            sheet.Space(RowHeight);
        }
    }

    /// <summary>The published range as a bar, what came out as a mark on it.</summary>
    public static void Range(Sheet sheet, YieldRange range)
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
        var textX = Math.Clamp(X(range.Actual) - canvas.Measure(text, Stage) / 2, sheet.Left, sheet.Right - canvas.Measure(text, Stage));
        canvas.Text(text, Stage, textX, axis - 13);
        canvas.Text("dot: what came out · line: typical · grey: usual range · frame: extreme range", Lettering.Label, sheet.Left, axis + 21);
        sheet.Space(56);
    }

    private static void Bar(Canvas canvas, WayKind kind, Box box)
    {
        if (kind == WayKind.Stage)
        {
            canvas.Fill(box, 0.25);
            return;
        }

        if (kind == WayKind.Loss)
            canvas.Hatch(box, 4, 0.6);
        else
            canvas.Dots(box);
        canvas.Frame(box, 0.75);
    }

    private static string Sign(WayKind kind) => kind switch
    {
        WayKind.Stage => "",
        WayKind.Loss => "− ",
        WayKind.Added => "+ ",
    };

    private static IEnumerable<Weight> Given(params Weight?[] weights) =>
        weights.Where(weight => weight is not null).Select(weight => weight!.Value);
}
