using ProcessorDesk.Paper;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Web.Pages.Cutting;

/// <summary>What can hurt someone at the table, with who published it.</summary>
internal static class CutCautions
{
    private static readonly Caution s_lead = new(
        "Lead",
        "Fragments too small to see lie far from the wound, and grinding spreads them. Cut at least 4 in around its path; throw out what is bruised, discoloured or dirty.",
        "Oregon State University PNW 517; Wisconsin DNR");

    private static readonly Caution s_wasting = new(
        "Chronic wasting disease",
        "Not tested is not negative. One animal at a time; brain, cord, nodes and spleen stay uncut. Follow your state's rules.",
        "Michigan State University Extension 2022; Minnesota Department of Agriculture; CDC");

    private static readonly Caution s_trichinae = new(
        "Trichinae",
        "Freezing, smoking and curing do not reliably kill them. The meat has to be cooked through; clean the grinder after it.",
        "Missouri Department of Conservation");

    public static IReadOnlyList<Caution> For(IEnumerable<Species> species)
    {
        var kinds = species.Distinct().ToList();
        List<Caution> cautions = [];
        if (kinds.Any(IsShot))
            cautions.Add(s_lead);
        if (kinds.Any(HasWasting))
            cautions.Add(s_wasting);
        if (kinds.Any(kind => kind is Species.Bear or Species.WildBoar))
            cautions.Add(s_trichinae);
        return cautions;
    }

    private static bool HasWasting(Species species) =>
        species is Species.WhiteTailDeer or Species.MuleDeer or Species.Elk or Species.Moose;

    private static bool IsShot(Species species) =>
        HasWasting(species) || species is Species.Pronghorn or Species.Bear or Species.WildBoar;
}
