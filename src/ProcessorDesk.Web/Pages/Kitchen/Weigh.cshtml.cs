using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Kitchen;

/// <summary>What came out of a batch, load by load or all together, and how it will go back.</summary>
public sealed class WeighModel(RecordsContext records, Verbs verbs, ShopDay shop) : BatchPage(records, verbs, shop)
{
    [BindProperty]
    public WeighFinishedInput Input { get; set; } = new();

    public string Unit => UnitFactors.Symbol(Division.Unit);

    public bool AsksOnce { get; private set; }

    private ScaleDivision Division => Shop.Settings.BenchDivision;

    private IEnumerable<Load> Mixed => View.Loads.Where(load => load.MixedAt is not null);

    /// <summary>Green as drawn, of all loads together.</summary>
    public Weight Green => Division.Sum(View.GoingBack.Select(one => one.Green));

    /// <summary>What the formula foretells, from the most loss to the least.</summary>
    public string Expected => View.Batch.FormulaVersion is var formula && formula.LossLow == formula.LossHigh
        ? $"about {Shop.Print(After(formula.LossTypical))}"
        : $"{Shop.Print(After(View.Batch.FormulaVersion.LossHigh))} to {Shop.Print(After(View.Batch.FormulaVersion.LossLow))}";

    public IEnumerable<Choice> Loads =>
        Mixed.Count() == 1 ? [] : [new("", "All together"), .. Mixed.Select(load => new Choice(load.Id.ToString(CultureInfo.InvariantCulture), $"Load {load.Number}", $"{Shop.Print(load.Green)} green"))];

    public IEnumerable<Choice> ToStrike => View.Lines.All.Where(line => line.Stands && (line.Kind is BatchLineKind.Finished or BatchLineKind.LeftInMachines))
        .Select(line => new Choice($"{line.Id}", Shop.Print(Weight.FromMilligrams(line.Amount)), $"{Of(line)}, {Shop.Moment(line.TakenAt)}"));

    public string Of(BatchLine line) => line.Kind == BatchLineKind.LeftInMachines ? "Left in the machines" : line.LoadId is { } load ? $"Load {View.Loads.Single(one => one.Id == load).Number}" : "All together";

    public void OnGet()
    {
        if (View.Lines.Finished.Select(one => one.LoadId).OfType<int>().ToHashSet() is { Count: > 0 } weighed)
            Input.Load = Mixed.FirstOrDefault(load => !weighed.Contains(load.Id))?.Id.ToString(CultureInfo.InvariantCulture) ?? Input.Load;
    }

    public IActionResult OnPost()
    {
        var gross = ModelState.Read(WeightText.Parse(Input.Gross, Division.Unit), "Input.Gross");
        var tare = Input.Tare.Trim() == "" ? Weight.Zero : ModelState.Read(WeightText.Parse(Input.Tare, Division.Unit), "Input.Tare");
        int? pieces = Input.Pieces.Trim() == "" ? null : ModelState.Read(CountText.Parse(Input.Pieces), "Input.Pieces");
        var left = Input.Left.Trim() == "" ? Weight.Zero : Division.Round(ModelState.Read(WeightText.Parse(Input.Left, Division.Unit), "Input.Left"));
        int? load = Input.Load == "" ? null : int.TryParse(Input.Load, NumberStyles.None, CultureInfo.InvariantCulture, out var typed) ? typed : 0;
        if (ModelState.IsValid)
            Look(Division.Round(gross) - Division.Round(tare), load);
        if (!ModelState.IsValid)
            return Page();
        return Do("weigh the finished product", $"{Shop.Print(Division.Round(gross) - Division.Round(tare))} saved.", act =>
        {
            var weighed = Records.WeighFinished(Id, load, Division.Round(gross), Division.Round(tare), act, pieces);
            return Renamed(weighed.IsDone && left.IsPositive ? Records.WeighLeft(Id, left, act) : weighed, "Weight", "Gross");
        });
    }

    public IActionResult OnPostStrike()
    {
        if (Input.StrikeId is not { } weighIn || !Records.WeighIns.Any(one => one.Id == weighIn && one.BatchId == Id))
            ModelState.AddModelError("Input.StrikeId", "Choose the weight that is wrong.");
        if (Input.StrikeBecause.Trim() == "")
            ModelState.AddModelError("Input.StrikeBecause", "Say why the weight is wrong.");
        if (!ModelState.IsValid)
            return Page();
        return Do("strike out a weight", "The weight is struck out. Weigh the right one.", act => Records.StrikeFinished(Input.StrikeId!.Value, Input.StrikeBecause, act));
    }

    /// <summary>More than went in looks like a slipped point: asked about once.</summary>
    private void Look(Weight net, int? load)
    {
        var before = Division.Sum(View.Lines.Finished.Where(one => load is null || one.LoadId == load).Select(one => one.Net));
        var green = load is { } one ? Division.Sum(View.Entries.SelectMany(entry => Mixed.Where(mixed => mixed.Id == one).Select(mixed => View.Batch.GreenOf(mixed, entry.Id, Division)))) : Green;
        if (green.IsZero || before + net <= green)
            return;
        AsksOnce = true;
        var printed = Shop.Print(net);
        if (Input.Sure && Input.SureOf == printed)
            return;
        ModelState.AddModelError("Input.Gross", $"With {printed} more comes out than the {Shop.Print(green)} of green weight that went in. Type it again, or say that it is right.");
        ModelState.Remove("Input.Sure");
        ModelState.Remove("Input.SureOf");
        (Input.Sure, Input.SureOf) = (false, printed);
    }

    private Weight After(Proportion loss) => (Ratio.One - loss.ToRatio()).Times(Green);
}
