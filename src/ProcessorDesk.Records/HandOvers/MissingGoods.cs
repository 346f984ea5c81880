namespace ProcessorDesk.Records;

/// <summary>
/// What of a job was still to come at a moment. Worked out from facts that carry their time, so that the copy of a hand-over says the
/// same years later as on its day.
/// </summary>
/// <param name="CuttingDoneAt">Null while it is cut or hangs.</param>
/// <param name="HasCuts">Cuts were packed at the table.</param>
/// <param name="BoxedAt">When somebody said that everything is in boxes; null where nobody did.</param>
public sealed record MissingGoods(
    DateTime? CuttingDoneAt, DateTime? SplitAgreedAt, bool HasCuts, DateTime? BoxedAt, IReadOnlyList<MadeProduct> Made, JobGoods Goods)
{
    /// <param name="placeOf">How the place of boxes that stay is said: the clerk wants the shelf, the owner only that they are here.</param>
    public IReadOnlyList<Missing> At(DateTime moment, Func<string?, string> placeOf)
    {
        List<Missing> missing = [.. ToMake(moment), .. ToBox(moment), .. Standing(moment, placeOf), .. PartsHere(moment)];
        // Everything known has left, yet nobody said that this was all.
        if (missing.Count == 0 && !(BoxedAt <= moment))
            missing.Add(new Missing("Perhaps more", "boxing is not finished"));
        return missing;
    }

    private IEnumerable<Missing> ToMake(DateTime moment)
    {
        if (!(CuttingDoneAt <= moment))
            return [new Missing("The meat", "not cut yet")];
        if (!(SplitAgreedAt <= moment))
            return [new Missing("What is made of the trim", "not agreed yet")];
        return Made.Where(product => !product.WasReleasedAt(moment)).Select(product => new Missing(product.Name, product.WhereAt(moment)));
    }

    private IEnumerable<Missing> ToBox(DateTime moment)
    {
        var boxed = Goods.Boxes.Where(box => box.StoodAt(moment)).SelectMany(box => box.Contents).Select(content => content.AllotmentId).ToHashSet();
        if (HasCuts && CuttingDoneAt <= moment && !boxed.Contains(null))
            yield return new Missing("Cuts", "packed, not in a box yet");
        foreach (var product in Made.Where(product => product.WasReleasedAt(moment) && !boxed.Contains(product.AllotmentId)))
            yield return new Missing(product.Name, "made, not in a box yet");
    }

    private IEnumerable<Missing> Standing(DateTime moment, Func<string?, string> placeOf) => Goods.Boxes
        .Where(box => box.WasHereAt(moment))
        .GroupBy(box => placeOf(box.Place))
        .Select(boxes => new Missing(
            $"{(boxes.Count() == 1 ? "Box" : "Boxes")} {string.Join(", ", boxes.Select(box => box.Number))} ({string.Join(", ", boxes.SelectMany(box => box.Contents).Select(content => content.Name).Distinct())})",
            boxes.Key));

    private IEnumerable<Missing> PartsHere(DateTime moment) =>
        Goods.Parts.Where(part => !(part.GivenAt <= moment)).Select(part => new Missing(part.InWords, "still here"));
}
