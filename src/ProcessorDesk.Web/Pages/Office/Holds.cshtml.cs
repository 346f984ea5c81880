using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Forms;

namespace ProcessorDesk.Web.Pages.Office;

/// <summary>Which reason for a hold stops which act. What is built in can be tightened and set back, never loosened.</summary>
public sealed class HoldsModel(RecordsContext records, Verbs verbs) : StationPage
{
    /// <summary>The rules to tighten, as "reason.act" in numbers.</summary>
    [BindProperty]
    public List<string> Stops { get; set; } = [];

    public ILookup<HoldReason, HoldRule> Rules { get; private set; } = Enumerable.Empty<HoldRule>().ToLookup(rule => rule.Reason);

    public static IReadOnlyList<HeldAct> Acts { get; } = Enum.GetValues<HeldAct>();

    public void OnGet() => Rules = records.HoldRules.AsNoTracking().OrderBy(rule => rule.Reason).ThenBy(rule => rule.Act).ToLookup(rule => rule.Reason);

    public IActionResult OnPost()
    {
        var outcome = verbs.Run("set what holds stop", Hand, FormKey, _ =>
        {
            foreach (var rule in records.HoldRules.Where(rule => !rule.BuiltIn))
            {
                if (Stops.Contains(Key(rule)))
                    rule.Tighten();
                else
                    rule.Reset();
            }

            return Outcome.Done();
        });
        ModelState.Add(outcome.Findings);
        if (outcome.IsDone)
        {
            Say("The rules for holds are saved.");
            return RedirectToPage();
        }

        OnGet();
        return Page();
    }

    public IActionResult OnPostReset()
    {
        Stops = [];
        return OnPost();
    }

    public static string Key(HoldRule rule) => FormattableString.Invariant($"{(int)rule.Reason}.{(int)rule.Act}");

    public static string Name(HoldRule rule) => $"{Start(Wording.Of(rule.Reason))} stops {Wording.Of(rule.Act)}";

    public static string Start(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
