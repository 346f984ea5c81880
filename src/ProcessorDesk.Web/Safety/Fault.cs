using System.Security.Cryptography;

namespace ProcessorDesk.Web.Safety;

/// <summary>A fault nobody foresaw: its reference stands on the page and in the log.</summary>
public sealed record Fault(string Reference)
{
    // No letter that can be read as another when it is told over the telephone.
    private const string Symbols = "ACDEFHJKMNPRTVWX3479";

    public static Fault New() => new(RandomNumberGenerator.GetString(Symbols, 6));
}
