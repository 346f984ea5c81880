namespace ProcessorDesk.Web.Forms;

/// <summary>One thing to choose: what is sent, what is read, and a second line under it.</summary>
public sealed record Choice(string Value, string Text, string Hint = "", bool Closed = false)
{
    /// <summary>Every value of an enum, in its own order, in the shop's words.</summary>
    public static IReadOnlyList<Choice> Of<T>(Func<T, string> words)
        where T : struct, Enum => [.. Enum.GetValues<T>().Select(v => new Choice(v.ToString(), words(v)))];
}
