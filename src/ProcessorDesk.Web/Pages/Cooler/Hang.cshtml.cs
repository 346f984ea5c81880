using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Yields;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;
using ProcessorDesk.Web.Pages.Shared;

namespace ProcessorDesk.Web.Pages.Cooler;

/// <summary>Gives a carcass its rail and its weights: as it came in, hot, chilled.</summary>
public sealed class HangModel(RecordsContext records, Verbs verbs, ShopDay shop) : StationPage
{
    private static readonly WeighInKind[] s_kinds = [WeighInKind.Arrival, WeighInKind.HotHanging, WeighInKind.ChilledHanging];

    [BindProperty]
    public InputModel Input { get; set; } = new();

    public Carcass Animal { get; private set; } = null!;

    public IReadOnlyList<CarcassWeight> Weights { get; private set; } = [];

    public IReadOnlyList<StandingHold> Holds { get; private set; } = [];

    /// <summary>The typed figure looks wrong: the page asks once.</summary>
    public bool AsksOnce { get; private set; }

    /// <summary>A weight of this kind stands already: the new one takes its place, and the page asks why.</summary>
    public bool AsksWhy { get; private set; }

    public string? Shrink => Weights.Shrink(Animal.Species, shop);

    public string Unit => UnitFactors.Symbol(shop.Settings.RailDivision.Unit);

    public string Division => shop.Settings.RailDivision.ToString();

    public IEnumerable<Choice> Kinds => s_kinds
        .Where(kind => kind != WeighInKind.Arrival || Weights.Last(kind) is null || Input.Kind == kind)
        .Select(kind => new Choice(kind.ToString(), kind == WeighInKind.Arrival ? "As it came in" : Wording.Of(kind),
            Weights.Last(kind) is { } weighed ? $"{shop.PrintRail(weighed)} stands" : ""));

    public IActionResult OnGet(int id)
    {
        if (!Load(id))
            return NotFound();
        Input.Rail = Animal.Rail ?? "";
        Input.Kind = Weights.Last(WeighInKind.HotHanging) is null ? WeighInKind.HotHanging : WeighInKind.ChilledHanging;
        return Page();
    }

    public IActionResult OnPost(int id)
    {
        if (!Load(id))
            return NotFound();
        if (WasSaved(records))
        {
            Say("This was saved already. It is booked once.");
            return RedirectToPage(new { id });
        }
        var weight = Read();
        if (!ModelState.IsValid)
            return Page();

        var outcome = verbs.Run("hang a carcass", Hand, FormKey, act => records.Hang(id, Input.Rail, Input.Kind, weight, Input.Because, act));
        ModelState.Add(outcome.Findings);
        if (!ModelState.IsValid)
            return Page();

        Say(weight is { } weighed ? $"{Wording.Of(Input.Kind)}: {shop.PrintRail(weighed)}." : "The rail is noted.");
        return RedirectToPage(new { id });
    }

    /// <summary>The weight at the rail's division; null where only the rail was typed.</summary>
    private Weight? Read()
    {
        if (!s_kinds.Contains(Input.Kind))
            ModelState.AddModelError("Input.Kind", "Choose which weight it is.");
        if (string.IsNullOrWhiteSpace(Input.Weight) && !string.IsNullOrWhiteSpace(Input.Rail))
            return null;
        var typed = ModelState.Read(WeightText.Parse(Input.Weight, shop.Settings.RailDivision.Unit), "Input.Weight");
        if (!ModelState.IsValid)
            return null;
        var weight = shop.Settings.RailDivision.Round(typed);
        if (!weight.IsPositive)
            ModelState.AddModelError("Input.Weight", "An animal weighs more than nothing. Type what the rail scale shows.");
        AsksWhy = Weights.Last(Input.Kind) is not null;
        if (AsksWhy && string.IsNullOrWhiteSpace(Input.Because))
            ModelState.AddModelError("Input.Because", $"{shop.PrintRail(Weights.Last(Input.Kind)!.Value)} stands for this. Say why it is weighed again; the first will be struck out.");
        var doubt = Weights.Doubt(Input.Kind, weight, shop);
        AsksOnce = doubt is not null;
        var answered = Input.Sure && Input.SureOf == shop.PrintRail(weight);
        if (doubt is not null && !answered)
        {
            ModelState.AddModelError("Input.Weight", doubt);
            ModelState.Remove("Input.Sure");
            ModelState.Remove("Input.SureOf");
            (Input.Sure, Input.SureOf) = (false, shop.PrintRail(weight));
        }

        return weight;
    }

    private bool Load(int id)
    {
        var animal = records.Animals.AsNoTracking().Where(one => one.Id == id)
            .Select(one => new
            {
                one.Species,
                one.Tag,
                one.Rail,
                one.ArrivalState,
                one.ArrivedAt,
                one.HungAt,
                one.SurfaceTemperature,
            })
            .SingleOrDefault();
        if (animal is null)
            return false;
        var guidance = HangingGuidance.For(animal.Species);
        var hung = animal.HungAt is { } at ? guidance.Say(shop.DayOf(at), shop.Today).Text : "Not hung yet.";
        Animal = new Carcass(
            id, animal.Species, Wording.Of(animal.Species), animal.Tag, animal.Rail, Wording.Of(animal.ArrivalState), shop.Date(animal.ArrivedAt),
            animal.SurfaceTemperature?.Print(), animal.SurfaceTemperature is { } surface ? guidance.Judge(surface)?.Text : null, hung, guidance.Source,
            [
                .. records.Shares.AsNoTracking().Where(share => share.AnimalId == id).OrderBy(share => share.JobId)
                    .Select(share => new IndexModel.Whose(share.JobId, share.Job.Number, share.Job.Owner.Name))
            ]);
        Weights =
        [
            .. records.WeighIns.AsNoTracking()
                .Where(one => one.AnimalId == id && one.JobId == null)
                .OrderBy(one => one.At).ThenBy(one => one.Id)
                .Select(one => new
                {
                    one.Id,
                    one.Kind,
                    one.Net,
                    one.At,
                    By = records.Staff.Where(staff => staff.Id == one.ById).Select(staff => staff.Initials).FirstOrDefault() ?? "",
                    Struck = one.Strike == null ? null : one.Strike.Because,
                })
                .AsEnumerable()
                .Select(one => new CarcassWeight(one.Id, one.Kind, one.Net, shop.PrintRail(one.Net), shop.Moment(one.At), one.By, one.Struck))
        ];
        Holds = StandingHold.Of(records, records.Holds.AsNoTracking().Standing().OnAnimal(records, id), shop);
        return true;
    }

    /// <summary>The animal as the page shows it.</summary>
    public sealed record Carcass(
        int Id, Species Species, string Name, string? Tag, string? Rail, string State, string Arrived,
        string? Surface, string? TooWarm, string Hung, string Source, IReadOnlyList<IndexModel.Whose> Jobs);

    public sealed class InputModel
    {
        public string Rail { get; set; } = "";

        public WeighInKind Kind { get; set; } = WeighInKind.HotHanging;

        public string Weight { get; set; } = "";

        public string Because { get; set; } = "";

        public bool Sure { get; set; }

        /// <summary>The figure that was asked about: another one is asked about anew.</summary>
        public string SureOf { get; set; } = "";
    }
}
