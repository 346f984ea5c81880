using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Forms;

namespace ProcessorDesk.Web.Pages.Office;

/// <summary>What trim can become.</summary>
public sealed class ProductsModel(RecordsContext records) : StationPage
{
    public IReadOnlyList<Row> Offered { get; private set; } = [];

    public IReadOnlyList<Row> Retired { get; private set; } = [];

    public void OnGet()
    {
        var rows = records.Products.AsNoTracking().OrderBy(product => product.Name)
            .Include(product => product.Formulas).ThenInclude(formula => formula.Ingredients).AsSplitQuery()
            .AsEnumerable()
            .Select(product => new Row(product, product.Formulas.MaxBy(formula => formula.Number)))
            .ToList();
        Offered = [.. rows.Where(row => row.Product.RetiredAt is null)];
        Retired = [.. rows.Where(row => row.Product.RetiredAt is not null)];
    }

    public sealed record Row(Product Product, FormulaVersion? Latest)
    {
        public FormulaOutlook? Outlook => Latest is null ? null : FormulaOutlook.Of(Product, Latest);
    }
}
