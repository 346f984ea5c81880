namespace ProcessorDesk.Records;

/// <summary>Typed text as it is kept: trimmed, and blank is nothing.</summary>
public static class Texts
{
    public static string? OrNull(string? text) => string.IsNullOrWhiteSpace(text) ? null : text.Trim();

    /// <summary>A tag or licence number as it is looked up: letters and digits alone, upper case.</summary>
    public static string? Key(string? text)
    {
        var key = string.Concat((text ?? "").Where(char.IsLetterOrDigit)).ToUpperInvariant();
        return key.Length == 0 ? null : key;
    }
}
