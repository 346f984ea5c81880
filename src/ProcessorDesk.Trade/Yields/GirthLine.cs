namespace ProcessorDesk.Trade.Yields;

/// <summary>A published straight line from the girth of the chest to a weight: pounds = slope × inches − less.</summary>
/// <param name="Id">Lasting name; a shop's own figure names the one it stands for.</param>
/// <param name="Slope">Pounds an inch.</param>
/// <param name="Less">Pounds taken off.</param>
public sealed record GirthLine(string Id, decimal Slope, decimal Less)
{
    public static GirthLine AdultLive { get; } = new("girth-adult-live", 6.5520m, 95.0128m);

    public static GirthLine AdultDressed { get; } = new("girth-adult-dressed", 5.6037m, 94.0982m);

    public static GirthLine FawnLive { get; } = new("girth-fawn-live", 5.3003m, 74.1489m);

    public static GirthLine FawnDressed { get; } = new("girth-fawn-dressed", 3.9499m, 55.6158m);

    /// <summary>Rounded once, to the milligram.</summary>
    public Weight At(decimal inches) => Weight.FromPounds(Slope * inches - Less);

    /// <summary>"6.5520 × 36 in − 95.0128 = 140.8592 lb".</summary>
    public string Working(decimal inches) =>
        FormattableString.Invariant($"{Slope:0.0000} × {inches:0.####} in − {Less:0.0000} = {Slope * inches - Less:0.####} lb");
}
