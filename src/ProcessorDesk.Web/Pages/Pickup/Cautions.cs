using ProcessorDesk.Paper;

namespace ProcessorDesk.Web.Pages.Pickup;

/// <summary>What an owner is told about the meat that goes home, by what it came from.</summary>
internal static class Cautions
{
    public static bool IsGame(Species species) => species is not (Species.Hog or Species.Beef or Species.Lamb or Species.Goat);

    public static IReadOnlyList<Caution> ToTakeHome(IReadOnlyList<Species> species)
    {
        List<Caution> cautions = [];
        if (species.Any(one => one is Species.WhiteTailDeer or Species.MuleDeer or Species.Elk or Species.Moose))
            cautions.Add(new Caution(
                "Disease testing",
                "Not tested is not the same as not detected. Where your wildlife agency advises a test, wait for its result before you eat or share the meat.",
                "Centers for Disease Control and Prevention; Michigan State University Extension 2022"));
        if (species.Any(IsGame))
            cautions.Add(new Caution(
                "Lead",
                "Bullet fragments can be too small to see, and grinding spreads them. Children under six and pregnant women are most at risk.",
                "Wisconsin Department of Natural Resources; Minnesota Department of Agriculture 2008"));
        if (species.Any(one => one is Species.Bear or Species.WildBoar))
            cautions.Add(new Caution(
                "Trichinae",
                "Freezing, smoking and curing do not reliably kill them in bear and wild boar. Cook it through.",
                "Missouri Department of Conservation"));
        return cautions;
    }
}
