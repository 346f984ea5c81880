using Microsoft.AspNetCore.Mvc.ModelBinding;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Web.Forms;

/// <summary>Takes what the trade says about typed text and puts it beside the field it belongs to.</summary>
public static class ModelStateReading
{
    /// <summary>The value, or its default with the problem noted on the field: read all fields, then ask <c>ModelState.IsValid</c>.</summary>
    public static T Read<T>(this ModelStateDictionary state, Parsed<T> parsed, string field)
        where T : struct
    {
        if (parsed.Try(out var value, out var problem)) return value;
        state.AddModelError(field, problem);
        return default;
    }

    public static bool HasProblem(this ModelStateDictionary state, string field) => state[field]?.Errors.Count > 0;

    /// <summary>
    /// Forgets what was sent of the page's input, so that the page shows what a button made of it; the form's key and version
    /// stay as they were sent.
    /// </summary>
    public static void ShowChanged(this ModelStateDictionary state, string prefix = "Input")
    {
        foreach (var field in state.Keys.Where(key => key == prefix || key.StartsWith(prefix + ".", StringComparison.Ordinal)).ToList())
            state.Remove(field);
    }

    /// <summary>A rule's refusals, each on its field; <paramref name="prefix"/> is put before the rule's own field names.</summary>
    public static void Add(this ModelStateDictionary state, IEnumerable<Finding> findings, string prefix = "Input")
    {
        foreach (var finding in findings)
            state.AddModelError(finding.Field == "" ? "" : prefix == "" ? finding.Field : $"{prefix}.{finding.Field}", finding.Text);
    }
}
