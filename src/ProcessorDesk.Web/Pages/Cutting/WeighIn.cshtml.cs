using Microsoft.AspNetCore.Mvc;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Cutting;

/// <summary>Two taps and the digits: lug, figure, net at once, saved.</summary>
public sealed class WeighInModel(RecordsContext records, Verbs verbs, ShopDay shop) : StationPage
{
    [BindProperty]
    public WeighInInput Input { get; set; } = new();

    public TableJob Job { get; private set; } = null!;

    public IReadOnlyList<TableWeighIn> LastThree { get; private set; } = [];

    /// <summary>The scale as typed so far.</summary>
    public NetView Net { get; private set; } = NetView.Nothing;

    /// <summary>A weight of this kind stands in the lug: the page offers to weigh it again.</summary>
    public LugChoice.InIt? Stands { get; private set; }

    public bool AsksOnce { get; private set; }

    public string Unit => UnitFactors.Symbol(Division.Unit);

    public IEnumerable<Choice> Kinds => ScaleWeight.Kinds.Select(kind => new Choice(kind.ToString(), Wording.Of(kind)));

    public IEnumerable<Choice> Animals =>
        Job.Animals.Select(animal => new Choice($"{animal.Id}", animal.Name, animal.Weight is { } weight ? shop.PrintRail(weight) : ""));

    public IEnumerable<Choice> Cuts => Job.Cuts.Select(cut => new Choice(cut, cut));

    private ScaleDivision Division => shop.Settings.BenchDivision;

    public IActionResult OnGet(int id, int? animal)
    {
        if (!Load(id))
            return NotFound();
        if (!Job.IsOnTable)
            return RedirectToPage("Sheet", new { id });
        Input.AnimalIds = Job.Animals is [var only] ? [only.Id] : [.. Job.Animals.Where(one => one.Id == animal).Select(one => one.Id)];
        return Page();
    }

    /// <summary>The net so far, for the script while one types and for a press without it.</summary>
    public IActionResult OnPostNet(int id)
    {
        if (!Load(id))
            return NotFound();
        var lug = ReadLug();
        if (ReadScale(lug) is { } scale)
            Look(scale, lug);
        return IsLive ? Partial("_Net", Net) : Page();
    }

    public IActionResult OnPost(int id, int? animal)
    {
        if (!Load(id))
            return NotFound();
        if (WasSaved(records))
        {
            Say("This weight was saved already. It is booked once.");
            return RedirectToPage(new { id, animal });
        }
        if (!Job.IsOnTable)
            ModelState.AddModelError("", Job.Done ? "Cutting of this job is finished. Bring it back to the table first." : "Cutting of this job has not started. Start it on the cut sheet first.");
        var lug = ReadLug();
        var scale = ReadScale(lug);
        ReadRest(lug);
        if (scale is not null)
            Look(scale, lug);
        if (!ModelState.IsValid)
            return Page();

        var order = new TableWeighing(
            id, Input.Kind, ScaleWeight.StaysInLug(Input.Kind) ? lug?.LugId : null, [.. Wanted(lug)], scale!.Gross, scale.Tare,
            new Reading("bench", Division, Note(), Packs()), Input.Again ? Input.AgainBecause : null);
        var outcome = verbs.Run("weigh at the table", Hand, FormKey, act => records.WeighAtTable(order, act));
        ModelState.Add(outcome.Findings);
        if (!ModelState.IsValid)
            return Page();

        Say($"{TableWeighIn.Words(Input.Kind, lug?.Number, null, null)}: {shop.Print(scale!.Net)} saved.");
        return RedirectToPage(new { id, animal });
    }

    private bool Load(int id)
    {
        if (TableJob.Find(records, id, shop) is not { } job)
            return false;
        Job = job;
        LastThree = TableWeighIn.Of(records, id, shop, most: 3);
        return true;
    }

    private bool NeedsLug => Input.Kind == WeighInKind.LeanTrim;

    private LugChoice? ReadLug()
    {
        if (!ScaleWeight.Kinds.Contains(Input.Kind))
            ModelState.AddModelError("Input.Kind", "Choose what lies on the scale.");
        if (Input.Lug.Trim() == "" && !NeedsLug)
            return null;
        var (lug, problem) = LugChoice.Read(records, Input.Lug, Job.Id, shop);
        if (lug is null)
            ModelState.AddModelError("Input.Lug", problem);
        Net = Net with { Lug = lug is null ? null : $"{lug.Number}", LugWords = lug is null ? "" : lug.FillingId is null ? "free" : "open for this job", Tare = lug is null ? null : shop.Print(lug.Tare) };
        return lug;
    }

    private ScaleWeight? ReadScale(LugChoice? lug)
    {
        if (!WeightText.Parse(Input.Gross, Division.Unit).Try(out var typed, out var problem))
        {
            ModelState.AddModelError("Input.Gross", problem);
            return null;
        }
        if (lug is null && (NeedsLug || Input.Lug.Trim() != ""))
            return null;
        return new ScaleWeight(Division.Round(typed), lug?.Tare ?? Weight.Zero);
    }

    /// <summary>The animals, the count of packs, why something was thrown out, and what stands in the lug.</summary>
    private void ReadRest(LugChoice? lug)
    {
        if (Input.AnimalIds.Any(one => Job.Animals.All(animal => animal.Id != one)))
            ModelState.AddModelError("Input.AnimalIds", "Choose an animal of this job.");
        else if (lug is { FillingId: null } && ScaleWeight.StaysInLug(Input.Kind) && Wanted(lug).Count == 0)
            ModelState.AddModelError("Input.AnimalIds", "Every lug names its animals. Choose whose meat is in it.");
        if (Input.Kind == WeighInKind.CutPack)
            ModelState.Read(CountText.Parse(Input.Packs), "Input.Packs");
        if (Input.Kind == WeighInKind.Discard && Input.Why.Trim() == "")
            ModelState.AddModelError("Input.Why", "Say why it is thrown out, for example: bloodshot.");
        if (lug is null || !ScaleWeight.StaysInLug(Input.Kind))
            return;
        if (lug.Standing.FirstOrDefault(one => one.Kind != Input.Kind) is { } other)
        {
            ModelState.AddModelError("Input.Lug", $"Lug {lug.Number} holds {Wording.Of(other.Kind).ToLowerInvariant()} of this job, {other.Printed}. Take another lug.");
            return;
        }
        Stands = lug.Standing.FirstOrDefault(one => one.Kind == Input.Kind);
        if (Stands is null)
            return;
        if (!Input.Again)
            ModelState.AddModelError("Input.Again", $"Lug {lug.Number} was weighed already: {Stands.Printed}. Take another lug, or weigh this one again.");
        else if (Input.AgainBecause.Trim() == "")
            ModelState.AddModelError("Input.AgainBecause", "Say why it is weighed again, for example: more came in.");
    }

    /// <summary>Shows the net, and says what can't be so or looks odd.</summary>
    private void Look(ScaleWeight scale, LugChoice? lug)
    {
        Net = Net with { Net = scale.Net.IsNegative ? null : shop.Print(scale.Net) };
        var of = Job.Animals.Where(animal => Wanted(lug).Contains(animal.Id)).ToList();
        if (of.Count == 0)
            of = [.. Job.Animals];
        var whole = of.Aggregate((Weight?)Weight.Zero, (sum, animal) => sum + animal.Weight);
        if (scale.Impossible(whole, Division) is { } impossible)
        {
            ModelState.AddModelError("Input.Gross", impossible);
            return;
        }
        if (scale.Odd(records.LastOf(Job.Id, Input.Kind), Division) is not { } odd)
            return;
        AsksOnce = true;
        if (Input.Sure && Input.SureOf == Net.Net)
            return;
        ModelState.AddModelError("Input.Gross", odd);
        ModelState.Remove("Input.Sure");
        ModelState.Remove("Input.SureOf");
        (Input.Sure, Input.SureOf) = (false, Net.Net!);
    }

    /// <summary>The animals meant: those of the open filling, those chosen, or the only one there is.</summary>
    private IReadOnlyList<int> Wanted(LugChoice? lug) =>
        lug is { FillingId: not null } && ScaleWeight.StaysInLug(Input.Kind) ? lug.AnimalIds
        : Input.AnimalIds.Count == 0 && Job.Animals is [var only] ? [only.Id]
        : Input.AnimalIds;

    private string? Note() => Input.Kind switch
    {
        WeighInKind.Discard => Input.Why,
        WeighInKind.CutPack => Input.Cut,
        _ => null,
    };

    private int? Packs() => Input.Kind == WeighInKind.CutPack ? CountText.Parse(Input.Packs).Result : null;
}
