using ProcessorDesk.Paper.Drawing;

namespace ProcessorDesk.Paper;

/// <summary>The label on a box of an owner's meat, in one of two stock sizes. Everything as printed.</summary>
/// <param name="ShopName">The shop's name.</param>
/// <param name="Box">Which of the job's boxes: "2", or "2 of 4".</param>
/// <param name="JobNumber">"1042".</param>
/// <param name="Contents">What is in it; what finds no room is counted.</param>
/// <param name="NetWeight">"24.10 lb".</param>
/// <param name="Packed">The day it was packed.</param>
/// <param name="Place">Where it stands in the freezer: "Freezer 2, shelf B"; may be empty.</param>
/// <param name="Owner">The owner's name, only where the owner wants it on the package; else empty.</param>
/// <param name="Code">The box's ticket code, which the QR symbol holds alone.</param>
public sealed record BoxLabel(
    string ShopName,
    string Box,
    string JobNumber,
    IReadOnlyList<ContentLine> Contents,
    string NetWeight,
    DateOnly Packed,
    string Place,
    string Owner,
    string Code)
{
    internal const string KeepFrozen = "Keep frozen";

    /// <summary>Our own words; the sentence for inspected meat would be untrue here.</summary>
    internal const string Words = "Custom processed for its owner, not inspected. Cook thoroughly.";

    /// <summary>One PDF, one page a label.</summary>
    /// <exception cref="ArgumentException">There is no label.</exception>
    public static byte[] Draw(IReadOnlyList<BoxLabel> labels, LabelStock stock)
    {
        if (labels.Count == 0)
            throw new ArgumentException("There is no label to print.", nameof(labels));
        var (size, draw) = stock switch
        {
            LabelStock.FourBySix => (PageSize.Ticket, (Action<Canvas, BoxLabel>)TallBoxLabel.Draw),
            LabelStock.FourByTwo => (PageSize.Strip, WideBoxLabel.Draw),
        };
        using var canvas = new Canvas("Box label " + string.Join(", ", labels.Select(label => label.Code)), size);
        foreach (var label in labels)
        {
            canvas.NewPage();
            draw(canvas, label);
        }

        return canvas.Save();
    }
}
