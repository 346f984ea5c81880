using System.Globalization;
using Microsoft.AspNetCore.Mvc.ModelBinding;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Web.Forms;

namespace ProcessorDesk.Web.Pages.Office;

/// <summary>The shop's settings as they are typed.</summary>
public sealed class ShopInput
{
    public string Name { get; set; } = "";

    public string Address { get; set; } = "";

    public string Phone { get; set; } = "";

    public string TimeZone { get; set; } = "";

    public string Terms { get; set; } = "";

    public string PromiseDays { get; set; } = "";

    public TagRule TagRule { get; set; } = TagRule.Hold;

    public string TaxRate { get; set; } = "";

    public string TaxWording { get; set; } = "";

    public string Tolerance { get; set; } = "";

    public string RailDivision { get; set; } = "";

    public string BenchDivision { get; set; } = "";

    public string CureDivision { get; set; } = "";

    public string MixerCapacity { get; set; } = "";

    public bool MoreAllergens { get; set; }
    public string SmallestFill { get; set; } = "";

    public string SmokehouseHolds { get; set; } = "";

    public string DayHolds { get; set; } = "";

    public string UnclaimedAfterDays { get; set; } = "";

    public string PublicAddress { get; set; } = "";

    public static ShopInput Of(ShopSettings shop) => new()
    {
        Name = shop.Name,
        Address = shop.Address ?? "",
        Phone = shop.Phone ?? "",
        TimeZone = shop.TimeZone,
        Terms = shop.Terms ?? "",
        PromiseDays = shop.PromiseDays.ToString(CultureInfo.InvariantCulture),
        TagRule = shop.TagRule,
        TaxRate = shop.TaxRate.Percent.ToString("0.####", CultureInfo.InvariantCulture),
        TaxWording = shop.TaxWording,
        Tolerance = shop.Tolerance.Percent.ToString("0.####", CultureInfo.InvariantCulture),
        RailDivision = shop.RailDivision.ToString(),
        BenchDivision = shop.BenchDivision.ToString(),
        CureDivision = shop.CureDivision.ToString(),
        MixerCapacity = shop.BenchDivision.Print(shop.MixerCapacity),
        MoreAllergens = shop.MoreAllergens,
        SmallestFill = Printed(shop, shop.SmallestFill),
        SmokehouseHolds = Printed(shop, shop.SmokehouseHolds),
        DayHolds = Printed(shop, shop.DayHolds),
        UnclaimedAfterDays = shop.UnclaimedAfterDays.ToString(CultureInfo.InvariantCulture),
        PublicAddress = shop.PublicAddress ?? "",
    };

    /// <summary>What writes everything onto the settings; null where something can't be read, which is noted on its field.</summary>
    public Action<ShopSettings>? Read(ModelStateDictionary state)
    {
        var promise = state.Read(CountText.Parse(PromiseDays), "Input.PromiseDays");
        var tax = state.Read(ProportionText.Parse(TaxRate), "Input.TaxRate");
        var tolerance = state.Read(ProportionText.Parse(Tolerance), "Input.Tolerance");
        var rail = Division(state, RailDivision, nameof(RailDivision));
        var bench = Division(state, BenchDivision, nameof(BenchDivision));
        var cure = Division(state, CureDivision, nameof(CureDivision));
        var mixer = state.Read(WeightText.Parse(MixerCapacity, WeightUnit.Pound), "Input.MixerCapacity");
        var (fill, smokehouse, day) = (Limit(state, SmallestFill, nameof(SmallestFill)), Limit(state, SmokehouseHolds, nameof(SmokehouseHolds)), Limit(state, DayHolds, nameof(DayHolds)));
        var unclaimed = state.Read(CountText.Parse(UnclaimedAfterDays), "Input.UnclaimedAfterDays");
        var (address, addressProblem) = Office.PublicAddress.Read(PublicAddress);
        if (addressProblem is not null)
            state.AddModelError("Input.PublicAddress", addressProblem);
        if (string.IsNullOrWhiteSpace(Name))
            state.AddModelError("Input.Name", "Type the shop's name.");
        if (string.IsNullOrWhiteSpace(TaxWording))
            state.AddModelError("Input.TaxWording", "Type what the tax is called on the invoice, for example Sales tax.");
        if (!TimeZoneInfo.TryFindSystemTimeZoneById(TimeZone.Trim(), out _))
            state.AddModelError("Input.TimeZone", "This zone is not known. Choose one of the list.");
        if (bench is { Unit: not WeightUnit.Pound })
            state.AddModelError("Input.BenchDivision", "The bench scale weighs in pounds, because charges are by the pound. Type it like 0.01 lb.");
        if (!state.HasProblem("Input.MixerCapacity") && !mixer.IsPositive)
            state.AddModelError("Input.MixerCapacity", "A mixer holds more than nothing. Type what one filling may weigh, for example 25 lb.");
        if (mixer.IsPositive && fill > mixer)
            state.AddModelError("Input.SmallestFill", "That is more than one filling of the mixer. Type less, or leave it blank.");
        if (!state.HasProblem("Input.UnclaimedAfterDays") && unclaimed < 1)
            state.AddModelError("Input.UnclaimedAfterDays", "Type one day or more.");
        if (!state.IsValid)
            return null;
        return shop =>
        {
            shop.Describe(Name, Address, Phone, TimeZone.Trim(), Terms, promise);
            shop.SetRules(TagRule, tax, TaxWording, tolerance);
            shop.SetScales(rail!.Value, bench!.Value, cure!.Value);
            shop.SetMixer(mixer);
            shop.SetMoreAllergens(MoreAllergens);
            shop.SetDay(fill, smokehouse, day);
            shop.SetUnclaimedAfter(unclaimed);
            shop.SetPublicAddress(address);
        };
    }

    private static string Printed(ShopSettings shop, Weight weight) => weight.IsZero ? "" : shop.BenchDivision.Print(weight);

    /// <summary>Blank is none.</summary>
    private static Weight Limit(ModelStateDictionary state, string typed, string field) =>
        string.IsNullOrWhiteSpace(typed) ? Weight.Zero : state.Read(WeightText.Parse(typed, WeightUnit.Pound), "Input." + field);

    private static ScaleDivision? Division(ModelStateDictionary state, string typed, string field)
    {
        if (ScaleDivisionText.Parse(typed).Try(out var division, out var problem))
            return division;
        state.AddModelError("Input." + field, problem);
        return null;
    }
}
