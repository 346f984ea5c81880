using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;

namespace ProcessorDesk.Web.Pages.Counter;

/// <summary>What can be asked for today.</summary>
internal static class Offer
{
    /// <summary>
    /// The newest formula of every product that is made, with its product and ingredients; plain ground last. A cured product
    /// whose formula has no cure line is not offered.
    /// </summary>
    public static IReadOnlyList<FormulaVersion> Of(RecordsContext records) =>
    [
        .. records.FormulaVersions.AsNoTracking()
            .Newest()
            .Where(formula => formula.Product.RetiredAt == null)
            .OrderBy(formula => formula.Product.IsPlainGround).ThenBy(formula => formula.Product.Name)
            .AsEnumerable()
            .Where(formula => !formula.Product.Cured || formula.HasCure)
    ];
}
