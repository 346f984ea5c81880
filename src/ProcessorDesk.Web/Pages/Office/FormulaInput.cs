using System.Globalization;
using Microsoft.AspNetCore.Mvc.ModelBinding;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Web.Forms;

namespace ProcessorDesk.Web.Pages.Office;

/// <summary>A formula as it is typed.</summary>
public sealed class FormulaInput
{
    public string LeanShare { get; set; } = "100";

    /// <summary>Fat in the owner's lean; empty where nobody says.</summary>
    public string LeanFat { get; set; } = "";

    /// <summary>The ingredient's id; empty where all of it is lean.</summary>
    public string AddedFat { get; set; } = "";

    /// <summary>The ingredient's id; empty for loose product.</summary>
    public string Casing { get; set; } = "";

    public string CasingHolds { get; set; } = "";

    public string LossLow { get; set; } = "0";

    public string LossTypical { get; set; } = "0";

    public string LossHigh { get; set; } = "0";

    public string SmallestRun { get; set; } = "";

    public string Step { get; set; } = "";

    /// <summary>Hours before it is stuffed; empty for none.</summary>
    public string RestHours { get; set; } = "";

    public List<FormulaLineInput> Lines { get; set; } = [];

    /// <param name="larder">Where a version older than it finds its added fat by name.</param>
    public static FormulaInput Of(FormulaVersion formula, ScaleDivision division, IReadOnlyList<Ingredient> larder) => new()
    {
        LeanShare = Figure(formula.LeanShare),
        LeanFat = formula.LeanFat is { } fat ? Figure(fat) : "",
        AddedFat = Id(formula.AddedFatIngredientId ?? larder.FirstOrDefault(one => one.Name.Equals(formula.AddedFat, StringComparison.OrdinalIgnoreCase))?.Id),
        Casing = Id(formula.CasingIngredientId),
        CasingHolds = formula.CasingHolds is { } holds ? division.PrintFigure(holds) : "",
        LossLow = Figure(formula.LossLow),
        LossTypical = Figure(formula.LossTypical),
        LossHigh = Figure(formula.LossHigh),
        SmallestRun = formula.SmallestRun.IsZero ? "" : division.PrintFigure(formula.SmallestRun),
        Step = formula.Step.IsZero ? "" : division.PrintFigure(formula.Step),
        RestHours = formula.RestMinutes == 0 ? "" : (formula.RestMinutes / 60m).ToString("0.##", CultureInfo.InvariantCulture),
        Lines = [.. formula.Ingredients.OrderBy(line => line.Position).Select(line => FormulaLineInput.Of(line, larder))],
    };

    /// <summary>The version this makes; null where something can't be read, which is noted on its field.</summary>
    public FormulaVersion? Read(ModelStateDictionary state, DateTime now, IReadOnlyList<Ingredient> larder)
    {
        var lean = state.Read(ProportionText.Parse(LeanShare), "Input.LeanShare");
        Proportion? leanFat = string.IsNullOrWhiteSpace(LeanFat) ? null : state.Read(ProportionText.Parse(LeanFat), "Input.LeanFat");
        var low = state.Read(ProportionText.Parse(LossLow), "Input.LossLow");
        var typical = state.Read(ProportionText.Parse(LossTypical), "Input.LossTypical");
        var high = state.Read(ProportionText.Parse(LossHigh), "Input.LossHigh");
        var smallest = WeightOrNone(state, SmallestRun, nameof(SmallestRun));
        var step = WeightOrNone(state, Step, nameof(Step));
        var holds = WeightOrNone(state, CasingHolds, nameof(CasingHolds));
        var rest = RestMinutes(state);
        var (fat, casing) = (Chosen(AddedFat, larder), Chosen(Casing, larder));
        var lines = Lines.Index().Where(line => !line.Item.IsEmpty)
            .Select(line => line.Item.Read(state, FormattableString.Invariant($"Input.Lines[{line.Index}]"), line.Index, larder)).ToList();
        if (!state.IsValid)
            return null;
        if (low > typical || typical > high || high >= Proportion.Whole)
            state.AddModelError("Input.LossTypical", "The losses go from low over typical to high, and stay under 100 %.");
        if (leanFat > Proportion.Whole)
            state.AddModelError("Input.LeanFat", "Lean holds at most 100 % fat.");
        if (lean < Proportion.Whole && fat is null)
            state.AddModelError("Input.AddedFat", $"{lean.Print()} is lean. Choose what the rest is, for example pork trim. What is not on the list is added under Ingredients.");
        if (casing is not null && !holds.IsPositive)
            state.AddModelError("Input.CasingHolds", "Type how much green weight one of them holds, for example 5 lb.");
        if (!state.IsValid)
            return null;
        var version = new FormulaVersion(now, lean, null, false, (low, typical, high), smallest, step, lines.OfType<FormulaIngredient>(), rest) { LeanFat = leanFat };
        if (fat is not null && lean < Proportion.Whole)
            version.WithAddedFat(fat);
        return casing is null ? version : version.WithCasing(casing, holds);
    }

    /// <summary>To the whole minute, so that 0.25 and 1.5 are taken; a week at the most.</summary>
    private int RestMinutes(ModelStateDictionary state)
    {
        if (string.IsNullOrWhiteSpace(RestHours))
            return 0;
        if (decimal.TryParse(RestHours.Trim(), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var hours) && hours <= 168m)
            return decimal.ToInt32(decimal.Round(hours * 60m, 0, MidpointRounding.AwayFromZero));
        state.AddModelError("Input.RestHours", "Type the hours, for example 4 or 1.5; empty where it need not rest.");
        return 0;
    }

    private static Weight WeightOrNone(ModelStateDictionary state, string typed, string field) =>
        string.IsNullOrWhiteSpace(typed) ? Weight.Zero : state.Read(WeightText.Parse(typed, WeightUnit.Pound), "Input." + field);

    private static Ingredient? Chosen(string id, IReadOnlyList<Ingredient> larder) => larder.FirstOrDefault(one => Id(one.Id) == id);

    private static string Id(int? id) => id?.ToString(CultureInfo.InvariantCulture) ?? "";

    private static string Figure(Proportion share) => share.Percent.ToString("0.####", CultureInfo.InvariantCulture);
}
