using System.Globalization;
using Microsoft.AspNetCore.Mvc.ModelBinding;
using ProcessorDesk.Records;

namespace ProcessorDesk.Web.Pages.Kitchen;

/// <summary>What was done about a batch, as it is typed.</summary>
public sealed class EndingInput
{
    public DispositionKind? Kind { get; set; }

    public ReadingStage? Stage { get; set; }

    public string Name { get; set; } = "";

    public string On { get; set; } = "";

    public string Reference { get; set; } = "";

    public string DiscardBecause { get; set; } = "";

    /// <summary>Null where something can't be read, which is noted on its field.</summary>
    public DispositionOrder? Read(ModelStateDictionary state)
    {
        if (Kind is null)
            state.AddModelError("Input.Kind", "Choose what was done.");
        DateOnly day = default;
        if (On.Trim() != "" && !DateOnly.TryParseExact(On.Trim(), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out day))
            state.AddModelError("Input.On", "Type the date, for example 2026-11-27.");
        return state.IsValid ? new DispositionOrder(Kind!.Value, Dispositions.Answers(Kind.Value) ? Stage : null, Name, day, Reference) : null;
    }
}
