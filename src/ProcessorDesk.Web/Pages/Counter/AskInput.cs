using Microsoft.AspNetCore.Mvc.ModelBinding;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Grinding;
using ProcessorDesk.Web.Forms;

namespace ProcessorDesk.Web.Pages.Counter;

/// <summary>One thing to be made of the trim, as typed.</summary>
public sealed class AskInput
{
    public int? ProductId { get; set; }

    public AskKind Kind { get; set; } = AskKind.Finished;

    public string Amount { get; set; } = "";

    public bool IsBlank => ProductId is null && Amount.Trim() == "";

    /// <summary>The ask; null, with the problem noted on its field, where it can't be read.</summary>
    public PlannedAsk? Read(ModelStateDictionary state, string prefix, IReadOnlyList<FormulaVersion> offered, bool noPork)
    {
        var formula = offered.FirstOrDefault(one => one.ProductId == ProductId);
        if (formula is null)
        {
            state.AddModelError($"{prefix}.ProductId", ProductId is null ? "Choose the product this amount is for." : "This product is not made any more. Choose another.");
            return null;
        }

        if (noPork && formula.HasPork)
            state.AddModelError($"{prefix}.ProductId", $"{formula.Product.Name} has pork in it, and this order is marked no pork. Choose another product, or take the mark off.");
        var (weight, percent) = (Weight.Zero, Proportion.Zero);
        if (Kind is AskKind.OwnLean or AskKind.Finished)
            weight = state.Read(WeightText.Parse(Amount, WeightUnit.Pound), $"{prefix}.Amount");
        else if (Kind is AskKind.Percent)
            percent = state.Read(ProportionText.Parse(Amount), $"{prefix}.Amount");
        return new PlannedAsk(formula, Kind, weight, percent);
    }
}
