using ProcessorDesk.Records;

namespace ProcessorDesk.Web.Pages.Trace;

/// <summary>Something that what was typed may mean.</summary>
/// <param name="Note">What tells it from others of its kind; may be empty.</param>
public sealed record Found(TraceStart Start, string Name, string Note)
{
    public string Address => TraceAddress.Page("Of", Start);
}
