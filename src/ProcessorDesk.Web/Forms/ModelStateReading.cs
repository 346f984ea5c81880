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

    /// <summary>A rule's refusals, each on its field; <paramref name="prefix"/> is put before the rule's own field names.</summary>
    public static void Add(this ModelStateDictionary state, IEnumerable<Finding> findings, string prefix = "Input")
    {
        foreach (var finding in findings)
            state.AddModelError(finding.Field == "" ? "" : prefix == "" ? finding.Field : $"{prefix}.{finding.Field}", finding.Text);
    }
}
