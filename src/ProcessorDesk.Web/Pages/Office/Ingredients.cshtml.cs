using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Office;

/// <summary>What goes into product beside the owners' own meat.</summary>
public sealed class IngredientsModel(RecordsContext records, ShopDay shop) : StationPage
{
    public IReadOnlyList<Ingredient> Offered { get; private set; } = [];

    public IReadOnlyList<Ingredient> Retired { get; private set; } = [];

    public ShopSettings Settings => shop.Settings;

    public void OnGet()
    {
        var all = records.Ingredients.AsNoTracking().OrderBy(one => one.Kind).ThenBy(one => one.Name).ToList();
        Offered = [.. all.Where(one => one.RetiredAt is null)];
        Retired = [.. all.Where(one => one.RetiredAt is not null)];
    }
}
