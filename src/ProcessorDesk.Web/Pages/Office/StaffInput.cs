using Microsoft.AspNetCore.Mvc.ModelBinding;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Door;

namespace ProcessorDesk.Web.Pages.Office;

/// <summary>One hand as it is typed.</summary>
public sealed class StaffInput
{
    private const int MostInitials = 4;

    public string Name { get; set; } = "";

    public string Initials { get; set; } = "";

    public StaffRole? Role { get; set; }

    /// <summary>A new PIN; empty leaves it as it is.</summary>
    public string Pin { get; set; } = "";

    public static StaffInput Of(Staff staff) => new() { Name = staff.Name, Initials = staff.Initials, Role = staff.Role };

    /// <summary>Notes what can't be kept on its field.</summary>
    public bool Check(ModelStateDictionary state, bool isNew)
    {
        if (string.IsNullOrWhiteSpace(Name))
            state.AddModelError("Input.Name", "Type the name.");
        if (string.IsNullOrWhiteSpace(Initials))
            state.AddModelError("Input.Initials", "Type the initials: they stand beside what the hand does.");
        else if (Initials.Trim().Length > MostInitials)
            state.AddModelError("Input.Initials", "Four letters at most.");
        if (Role is null && state["Input.Role"]?.Errors.Count is null or 0)
            state.AddModelError("Input.Role", "Choose what this hand does.");
        if ((isNew || Pin != "") && Pins.Problem(Pin) is { } problem)
            state.AddModelError("Input.Pin", problem);
        return state.IsValid;
    }

    public void WriteOn(Staff staff)
    {
        staff.Describe(Name, Initials, Role!.Value);
        if (Pin != "")
            staff.SetPin(Pins.Hash(Pin));
    }
}
