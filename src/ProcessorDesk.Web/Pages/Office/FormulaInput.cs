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

    public string AddedFat { get; set; } = "";

    public bool AddedFatIsPork { get; set; }

    public string LossLow { get; set; } = "0";

    public string LossTypical { get; set; } = "0";

    public string LossHigh { get; set; } = "0";

    public string SmallestRun { get; set; } = "";

    public string Step { get; set; } = "";

    /// <summary>Hours before it is stuffed; empty for none.</summary>
    public string RestHours { get; set; } = "";

    public List<IngredientInput> Lines { get; set; } = [];

    public static FormulaInput Of(FormulaVersion formula, ScaleDivision division) => new()
    {
        LeanShare = Figure(formula.LeanShare),
        AddedFat = formula.AddedFat ?? "",
        AddedFatIsPork = formula.AddedFatIsPork,
        LossLow = Figure(formula.LossLow),
        LossTypical = Figure(formula.LossTypical),
        LossHigh = Figure(formula.LossHigh),
        SmallestRun = formula.SmallestRun.IsZero ? "" : division.PrintFigure(formula.SmallestRun),
        Step = formula.Step.IsZero ? "" : division.PrintFigure(formula.Step),
        RestHours = formula.RestMinutes == 0 ? "" : (formula.RestMinutes / 60m).ToString("0.##", CultureInfo.InvariantCulture),
        Lines = [.. formula.Ingredients.OrderBy(line => line.Position).Select(IngredientInput.Of)],
    };

    /// <summary>The version this makes; null where something can't be read, which is noted on its field.</summary>
    public FormulaVersion? Read(ModelStateDictionary state, DateTime now)
    {
        var lean = state.Read(ProportionText.Parse(LeanShare), "Input.LeanShare");
        var low = state.Read(ProportionText.Parse(LossLow), "Input.LossLow");
        var typical = state.Read(ProportionText.Parse(LossTypical), "Input.LossTypical");
        var high = state.Read(ProportionText.Parse(LossHigh), "Input.LossHigh");
        var smallest = WeightOrNone(state, SmallestRun, nameof(SmallestRun));
        var step = WeightOrNone(state, Step, nameof(Step));
        var rest = RestMinutes(state);
        var ingredients = Lines.Index().Where(line => !line.Item.IsEmpty)
            .Select(line => line.Item.Read(state, FormattableString.Invariant($"Input.Lines[{line.Index}]"), line.Index)).ToList();
        if (!state.IsValid)
            return null;
        if (low > typical || typical > high || high >= Proportion.Whole)
            state.AddModelError("Input.LossTypical", "The losses go from low over typical to high, and stay under 100 %.");
        if (lean < Proportion.Whole && string.IsNullOrWhiteSpace(AddedFat))
            state.AddModelError("Input.AddedFat", $"{lean.Print()} is lean. Say what the rest is, for example pork trim.");
        return state.IsValid
            ? new FormulaVersion(now, lean, lean < Proportion.Whole ? AddedFat : null, lean < Proportion.Whole && AddedFatIsPork, (low, typical, high), smallest, step, ingredients.OfType<FormulaIngredient>(), rest)
            : null;
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

    private static string Figure(Proportion share) => share.Percent.ToString("0.####", CultureInfo.InvariantCulture);
}
