namespace ProcessorDesk.Web.Pages.Freezer;

/// <summary>One kind of pack of a job: a product, or a cut.</summary>
/// <param name="AllotmentId">Of a product; null for a cut.</param>
/// <param name="Made">Finished, or as packed at the table; null for what is not ready.</param>
/// <param name="PacksAtTable">How many were counted at the table; null where nobody counted.</param>
/// <param name="Where">Why it can't be packed yet; empty where it can.</param>
/// <param name="Boxed">Packs of it in boxes, those that left with them.</param>
/// <param name="BoxedNet">Net of its boxes; null where one of them holds something else as well.</param>
public sealed record PackKind(int? AllotmentId, string Name, Weight? Made, int? PacksAtTable, string Where, int Boxed, Weight? BoxedNet)
{
    public bool IsReady => Where == "";

    public static PackKind Of(MadeProduct product, IReadOnlyList<JobBox> boxes, DateTime now, ScaleDivision division)
    {
        var (packs, net) = InBoxes(boxes, content => content.AllotmentId == product.AllotmentId, division);
        return new PackKind(product.AllotmentId, product.Name, product.Finished, null, product.IsReleased ? "" : product.WhereAt(now), packs, net);
    }

    /// <param name="name">As the table says it; "Cuts" where it did not say which.</param>
    public static PackKind OfCut(string name, Weight packed, int? packsAtTable, bool isDone, IReadOnlyList<JobBox> boxes, ScaleDivision division)
    {
        var (packs, net) = InBoxes(boxes, content => content.AllotmentId is null && content.Name == name, division);
        return new PackKind(null, name, packed, packsAtTable, isDone ? "" : "cutting is not finished", packs, net);
    }

    private static (int Packs, Weight? Net) InBoxes(IReadOnlyList<JobBox> boxes, Func<JobBox.Packs, bool> isOfKind, ScaleDivision division)
    {
        var holding = boxes.Where(box => box.UnpackedAt is null && box.Contents.Any(isOfKind)).ToList();
        return (
            holding.SelectMany(box => box.Contents).Where(isOfKind).Sum(content => content.Count),
            holding.TrueForAll(box => box.Contents.All(isOfKind)) ? division.Sum(holding.Select(box => box.Net)) : null);
    }
}
