namespace ProcessorDesk.Records;

/// <summary>Which boxes are in the freezer.</summary>
public static class BoxQueries
{
    /// <summary>Neither taken apart nor handed over.</summary>
    public static IQueryable<Box> Here(this IQueryable<Box> boxes) => boxes.Where(box => box.HandOverId == null && box.UnpackedAt == null);
}
