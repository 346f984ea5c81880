namespace ProcessorDesk.Records;

/// <summary>Who acts, and at which station. Without a staff id it is the shop's own set-up.</summary>
public sealed record Hand(int? StaffId, string Station)
{
    public static Hand SetUp { get; } = new(null, "set-up");

    /// <exception cref="InvalidOperationException">Nobody is signed in.</exception>
    public int Id => StaffId ?? throw new InvalidOperationException("This act needs a hand.");
}
