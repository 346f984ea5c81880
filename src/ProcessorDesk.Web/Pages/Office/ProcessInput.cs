using System.Globalization;
using Microsoft.AspNetCore.Mvc.ModelBinding;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Process;
using ProcessorDesk.Web.Forms;

namespace ProcessorDesk.Web.Pages.Office;

/// <summary>What the shop's process records are held against, as it is typed.</summary>
public sealed class ProcessInput
{
    /// <summary>The option's id; empty for the published one that a record comes closest to.</summary>
    public string Cooling { get; set; } = "";

    public string CookingGap { get; set; } = "";

    public string ChillingGap { get; set; } = "";

    public string Accuracy { get; set; } = "";

    public static ProcessInput Of(ShopSettings shop) => new()
    {
        Cooling = shop.CoolingOption ?? "",
        CookingGap = shop.CookingGapMinutes.ToString(CultureInfo.InvariantCulture),
        ChillingGap = shop.ChillingGapMinutes.ToString(CultureInfo.InvariantCulture),
        Accuracy = shop.ThermometerAccuracy.Fahrenheit.ToString("0.##", CultureInfo.InvariantCulture),
    };

    /// <summary>Null where something can't be read, which is noted on its field.</summary>
    public Func<ShopSettings, IReadOnlyList<Finding>>? Read(ModelStateDictionary state)
    {
        var cooking = state.Read(CountText.Parse(CookingGap), "Input.CookingGap");
        var chilling = state.Read(CountText.Parse(ChillingGap), "Input.ChillingGap");
        var cooling = CoolingOptions.All.FirstOrDefault(option => option.Id == Cooling);
        if (cooling is null && Cooling != "")
            state.AddModelError("Input.Cooling", "Choose how the shop chills.");
        if (!decimal.TryParse(Accuracy.Trim(), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var degrees) || degrees > 20m)
            state.AddModelError("Input.Accuracy", "Type degrees Fahrenheit, for example 0.5; 0 where nothing is added.");
        return state.IsValid ? shop => shop.SetProcess(cooling, cooking, chilling, Temperature.FromFahrenheit(degrees)) : null;
    }
}
