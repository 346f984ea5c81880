using Microsoft.AspNetCore.Mvc;
using ProcessorDesk.Trade.Safety;

namespace ProcessorDesk.Web.Pages.Pickup;

/// <summary>One hand-over as a page: the same as its paper, to be read on a phone or printed by the browser.</summary>
public sealed class HandOverModel(RecordsContext records, ShopDay day) : StationPage
{
    public int Id { get; private set; }

    public HandOverFacts Facts { get; private set; } = null!;

    public IEnumerable<SafetyCaution> Cautions => SafetyCautions.For(Facts.Species);

    public ScaleDivision Division => day.Settings.BenchDivision;

    public IActionResult OnGet(int id)
    {
        if (HandOverFacts.Read(records, id) is not { } facts)
            return NotFound();
        (Id, Facts) = (id, facts);
        return Page();
    }

    public string Moment(DateTime utc) => day.Moment(utc);

    public string Print(Weight weight) => day.Print(weight);
}
