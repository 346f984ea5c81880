using Microsoft.AspNetCore.Mvc.ModelBinding;
using ProcessorDesk.Records;
using ProcessorDesk.Trade.Formulas;

namespace ProcessorDesk.Web.Pages.Office;

/// <summary>A product as it is typed; its formula has a form of its own.</summary>
public sealed class ProductInput
{
    public string Name { get; set; } = "";

    public ProcessKind? ProcessKind { get; set; }

    public bool Cured { get; set; }

    /// <summary>Whose rules for product for sale are shown beside the formula; null for none.</summary>
    public ProductClass? Class { get; set; }

    public static ProductInput Of(Product product) => new() { Name = product.Name, ProcessKind = product.ProcessKind, Cured = product.Cured, Class = product.Class };

    /// <summary>Notes what can't be kept on its field.</summary>
    public bool Check(ModelStateDictionary state)
    {
        if (string.IsNullOrWhiteSpace(Name))
            state.AddModelError("Input.Name", "Type the product's name.");
        if (ProcessKind is null && state["Input.ProcessKind"]?.Errors.Count is null or 0)
            state.AddModelError("Input.ProcessKind", "Choose how it is made.");
        return state.IsValid;
    }
}
