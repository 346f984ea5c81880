using ProcessorDesk.Trade.Process;

namespace ProcessorDesk.Web.Pages.Kitchen;

/// <summary>How a verdict stands on the page: a record that is still being written is not blamed for what it does not show yet.</summary>
internal static class VerdictLook
{
    /// <param name="isOver">Nothing more will be read of this stage.</param>
    public static string Of(ProcessVerdict verdict, bool isOver) => verdict switch
    {
        ProcessVerdict.Meets => "good",
        ProcessVerdict.DoesNotMeet => isOver ? "stop" : "",
        ProcessVerdict.NotShown => isOver ? "warn" : "",
    };

    public static string Words(ProcessVerdict verdict, string words, bool isOver) =>
        verdict == ProcessVerdict.Meets || isOver ? ": " + words : ", so far: go on reading";
}
