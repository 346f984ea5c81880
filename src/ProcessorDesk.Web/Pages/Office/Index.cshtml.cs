using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Office;

/// <summary>What the manager sets: one line for each, with how it stands.</summary>
public sealed class IndexModel(RecordsContext records, ShopDay shop) : StationPage
{
    public IReadOnlyList<(string Address, string Name, string Words)> Rooms { get; private set; } = [];

    public void OnGet()
    {
        var staff = records.Staff.Count(one => one.RetiredAt == null);
        var lugs = records.Lugs.Count(lug => lug.RetiredAt == null);
        var products = records.Products.AsNoTracking().Where(product => product.RetiredAt == null)
            .Select(product => new { product.Formulas.Count }).ToList();
        var ingredients = records.Ingredients.Count(one => one.RetiredAt == null);
        var list = records.PriceLists.InForceOn(shop.Today).AsNoTracking().Select(one => new { one.Name, one.StartsOn, one.Prices.Count }).SingleOrDefault();
        Rooms =
        [
            ("/Office/Shop", "Shop", $"{shop.Settings.Name}: address, tag rule, tax, scales, terms"),
            ("/Office/Staff", "Staff", $"{staff} at work: names, roles, PINs"),
            ("/Office/Prices", "Prices", list is null ? "No list is in force" : $"{list.Name}, since {shop.Date(list.StartsOn)}, {list.Count} {(list.Count == 1 ? "price" : "prices")}"),
            ("/Office/Products", "Products", $"{products.Count} offered: formulas, cure, loss"),
            ("/Office/Process", "Process records", "What cooking, chilling and drying are held against"),
            ("/Office/Ingredients", "Ingredients", ingredients == 0 ? "None yet: formulas are made of them" : $"{ingredients} in use: strengths, allergens, cost"),
            ("/Office/Lugs", "Lugs", lugs == 0 ? "None yet: the cutting table weighs in lugs" : $"{lugs} in use, with their tares"),
            ("/Office/Holds", "Holds", "Which reason stops which act"),
            ("/Trace", "Trace", "Any animal, lug, batch or box, backwards and forwards; who has to be told"),
        ];
    }
}
