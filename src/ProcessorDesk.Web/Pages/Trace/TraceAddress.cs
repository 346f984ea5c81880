using System.Globalization;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Door;

namespace ProcessorDesk.Web.Pages.Trace;

/// <summary>Addresses of traces: "/Trace/Of/batch/12".</summary>
public static class TraceAddress
{
    public static string Of(TracedKind kind, int id) => Page("Of", new TraceStart(kind, id));

    /// <summary>The same; null where this hand may not trace.</summary>
    public static string? IfOpen(SignedIn hand, TracedKind kind, int id) => hand.MayOpen("Trace") ? Of(kind, id) : null;

    public static string Page(string page, TraceStart start) => string.Create(CultureInfo.InvariantCulture, $"/Trace/{page}/{Word(start.Kind)}/{start.Id}");

    /// <summary>What the words of an address ask for; null where they say nothing that is traced.</summary>
    public static TraceStart? Read(string kind, int id) =>
        Enum.GetValues<TracedKind>().Where(one => Word(one) == kind).Select(one => (TraceStart?)new TraceStart(one, id)).SingleOrDefault();

    private static string Word(TracedKind kind) => kind switch
    {
        TracedKind.Animal => "animal",
        TracedKind.Job => "job",
        TracedKind.Lug => "lug",
        TracedKind.Batch => "batch",
        TracedKind.Box => "box",
        TracedKind.IngredientLot => "lot",
    };
}
