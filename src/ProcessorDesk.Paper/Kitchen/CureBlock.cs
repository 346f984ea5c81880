using ProcessorDesk.Paper.Drawing;
using ProcessorDesk.Trade.Curing;

namespace ProcessorDesk.Paper;

/// <summary>The cure of a load, in a frame of its own under a black bar: amount, limit with its source, the second weighing.</summary>
internal static class CureBlock
{
    private const double Bar = 21;
    private const double Inset = 10;
    private const double Tick = 24;
    private const double Ounces = 84;

    private static readonly Lettering Name = new(12, Bold: true);
    private static readonly Lettering Plain = new(10.5);
    private static readonly Lettering Grams = new(19, Bold: true);
    private static readonly Lettering Most = new(12, Bold: true);

    private static readonly string Spoons = CuringCautions.All.Single(caution => caution.Id == "cure.weigh").Text;

    /// <summary>Returns the height it took or, undrawn, would take.</summary>
    public static double Draw(Canvas canvas, BatchCure cure, string load, string meatBlock, Box place, bool draw = true)
    {
        var (left, width) = (place.X + Inset, place.Width - 2 * Inset);
        var y = place.Y + Bar + 4;
        if (draw)
            Head(canvas, place, load, meatBlock);
        y += Labels(canvas, left, width, y, draw);
        foreach (var line in cure.Lines)
            y += Line(canvas, line, left, width, y, draw);
        y += 3;
        foreach (var (text, lettering) in Words(cure))
        {
            var lines = canvas.Wrap(text, lettering, width);
            y += draw ? canvas.Lines(lines, lettering, left, y) : lines.Count * lettering.LineHeight;
        }

        if (draw)
            Checks(canvas, left, width, y);
        y += 2 * Blanks.Height + 4;
        if (draw)
            canvas.Frame(place with { Height = y - place.Y }, 2.25);
        return y - place.Y;
    }

    private static void Head(Canvas canvas, Box place, string load, string meatBlock)
    {
        var white = new Lettering(13, Bold: true, Grey: 1);
        canvas.Fill(place with { Height = Bar });
        canvas.Text($"CURE · {load}", white, place.X + Inset, place.Y + 15.5);
        canvas.TextEndingAt($"for {meatBlock} of meat and fat", white, place.Right - Inset, place.Y + 15.5);
    }

    private static (double Ounces, double Grams, double Most, double Then) Edges(double left, double width) =>
        (left + 0.53 * width, left + 0.72 * width, left + 0.86 * width, left + width);

    private static double Labels(Canvas canvas, double left, double width, double y, bool draw)
    {
        if (!draw)
            return Lettering.Label.LineHeight;
        var (ounces, grams, most, then) = Edges(left, width);
        var baseline = y + Lettering.Label.Ascent;
        foreach (var (text, right) in new[] { ("lb and oz", ounces), ("Weigh in", grams), ("At most", most), ("Then in mixer", then) })
            canvas.TextEndingAt(text, Lettering.Label, right, baseline);
        return Lettering.Label.LineHeight;
    }

    private static double Line(Canvas canvas, BatchCureLine line, double left, double width, double y, bool draw)
    {
        var edges = Edges(left, width);
        var room = edges.Ounces - left - Tick - Ounces;
        var names = canvas.Wrap(line.Name, Name, room);
        var strengths = canvas.Wrap(line.Strength, Plain, room);
        var height = Math.Max(Grams.LineHeight, names.Count * Name.LineHeight + strengths.Count * Plain.LineHeight) + 5;
        if (!draw)
            return height;
        var baseline = y + Grams.Ascent;
        canvas.Frame(new Box(left, y + 3, 15, 15), 1.3);
        var below = y + canvas.Lines(names, Name, left + Tick, y);
        canvas.Lines(strengths, Plain, left + Tick, below);
        Figure(canvas, line.PoundsAndOunces, Plain, edges.Ounces, Ounces, baseline);
        Figure(canvas, line.Grams, Grams, edges.Grams, edges.Grams - edges.Ounces - 10, baseline);
        Figure(canvas, line.Most, Most, edges.Most, edges.Most - edges.Grams - 8, baseline);
        Figure(canvas, line.Then, Plain, edges.Then, edges.Then - edges.Most - 8, baseline);
        return height;
    }

    private static void Figure(Canvas canvas, string text, Lettering lettering, double right, double room, double baseline) =>
        canvas.TextEndingAt(text, canvas.Fit(text, room, 1, lettering, 7), right, baseline);

    private static IEnumerable<(string Text, Lettering Lettering)> Words(BatchCure cure)
    {
        foreach (var figure in cure.Figures)
        {
            yield return ($"{figure.Ppm} of {figure.Agent} on the meat and fat. The limit is {figure.Limit}.", new Lettering(10.5, Bold: true));
            yield return ("Source: " + figure.Source, Lettering.Label);
        }

        yield return ("", new Lettering(3));
        yield return ("Where meat and fat weigh other than planned, have the cure worked out again before any goes in.", Plain);
        yield return (Spoons, new Lettering(10.5, Bold: true));
    }

    private static void Checks(Canvas canvas, double left, double width, double y)
    {
        Blanks.Draw(canvas, left, y, width, ("Meat and fat as weighed, lb", 30), ("Cure weighed, g", 30), ("Weighed by", 40));
        y += Blanks.Height;
        canvas.Frame(new Box(left, y + 9, 15, 15), 1.3);
        Blanks.Draw(canvas, left + Tick, y, width - Tick, ("Weighed again, g", 30), ("Weighed again by, after setting the scale to zero", 66));
    }
}
