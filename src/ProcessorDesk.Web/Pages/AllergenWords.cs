using ProcessorDesk.Records;
using ProcessorDesk.Web.Forms;

namespace ProcessorDesk.Web.Pages;

/// <summary>Allergens as the shop reads them: mustard and celery where its setting says so.</summary>
public static class AllergenWords
{
    private const Allergen More = Allergen.Mustard | Allergen.Celery;

    /// <summary>Each by itself.</summary>
    public static IEnumerable<Allergen> Of(Allergen all) => Enum.GetValues<Allergen>().Where(one => one != Allergen.None && all.HasFlag(one));

    /// <summary>"Milk, Wheat"; empty where there are none to be shown.</summary>
    public static string Say(Allergen all, ShopSettings shop) => string.Join(", ", Shown(all, shop).Select(Wording.Of));

    public static IEnumerable<Allergen> Shown(Allergen all, ShopSettings shop) => Of(all).Where(one => shop.MoreAllergens || !More.HasFlag(one));

    /// <summary>To be ticked: those shown, and what is ticked already.</summary>
    public static IReadOnlyList<Choice> Choices(IReadOnlyList<Allergen> ticked, ShopSettings shop) =>
        [.. Enum.GetValues<Allergen>().Where(one => one != Allergen.None && (shop.MoreAllergens || !More.HasFlag(one))).Union(ticked).Order().Select(one => new Choice(one.ToString(), Wording.Of(one)))];
}
