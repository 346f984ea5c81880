using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Office;

/// <summary>Numbered lugs and their tares: added, checked anew, retired.</summary>
public sealed class LugsModel(RecordsContext records, Verbs verbs, ShopDay shop) : StationPage
{
    [BindProperty]
    public NewLug Input { get; set; } = new();

    public IReadOnlyList<Row> Lugs { get; private set; } = [];

    public void OnGet() => Load();

    public IActionResult OnPost()
    {
        var number = ModelState.Read(CountText.Parse(Input.Number), "Input.Number");
        var tare = ModelState.Read(WeightText.Parse(Input.Tare, shop.Settings.BenchDivision.Unit), "Input.Tare");
        if (number == 0 && !ModelState.HasProblem("Input.Number"))
            ModelState.AddModelError("Input.Number", "Number the lugs from 1 on.");
        if (!ModelState.IsValid)
            return Again();
        var outcome = verbs.Run("add a lug", Hand, FormKey, act =>
        {
            if (records.Lugs.Any(lug => lug.Number == number))
                return Outcome.Refused(new Finding("Number", $"There is a lug {number} already. Give this one another number."));
            records.Lugs.Add(new Lug(number, tare, act.Now));
            return Outcome.Done();
        });
        if (outcome.IsDone)
        {
            Say($"Lug {number} is added with a tare of {shop.Print(tare)}.");
            return RedirectToPage();
        }

        ModelState.Add(outcome.Findings);
        return Again();
    }

    private PageResult Again()
    {
        Load();
        return Page();
    }

    private void Load()
    {
        Lugs =
        [
            .. records.Lugs.AsNoTracking().OrderBy(lug => lug.RetiredAt != null).ThenBy(lug => lug.Number)
                .Select(lug => new Row(
                    lug.Id, lug.Number, lug.Tare, lug.TareCheckedAt, lug.RetiredAt != null,
                    records.Fillings.Where(filling => filling.LugId == lug.Id && filling.EmptiedAt == null).Select(filling => (int?)filling.Job.Number).FirstOrDefault()))
        ];
        if (Input.Number == "" && ModelState.IsValid)
            Input.Number = (Lugs.Select(lug => lug.Number).DefaultIfEmpty().Max() + 1).ToString(CultureInfo.InvariantCulture);
    }

    public string Print(Weight weight) => shop.Print(weight);

    public string Date(DateTime utc) => shop.Date(utc);

    public sealed record Row(int Id, int Number, Weight Tare, DateTime CheckedAt, bool IsRetired, int? OpenJob);

    public sealed class NewLug
    {
        public string Number { get; set; } = "";

        public string Tare { get; set; } = "";
    }
}
