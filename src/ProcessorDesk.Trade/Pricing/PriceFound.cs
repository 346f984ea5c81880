namespace ProcessorDesk.Trade.Pricing;

/// <summary>A price and which list it is of.</summary>
/// <param name="Price">As the list has it.</param>
/// <param name="IsTodays">The job's own list lacks it: it is today's, and the line says so.</param>
public sealed record PriceFound<T>(T Price, bool IsTodays)
    where T : class
{
    /// <summary>"Smoked ring sausage (today's price)".</summary>
    public string Say(string text) => IsTodays ? $"{text} (today's price)" : text;
}
