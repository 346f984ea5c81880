namespace ProcessorDesk.Records;

/// <summary>Lugs in use.</summary>
public static class FillingQueries
{
    public static IQueryable<Filling> Open(this IQueryable<Filling> fillings) => fillings.Where(filling => filling.EmptiedAt == null);
}
