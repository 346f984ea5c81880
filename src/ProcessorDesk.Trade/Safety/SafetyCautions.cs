namespace ProcessorDesk.Trade.Safety;

/// <summary>The usual cautions for game, each once, by what they go for.</summary>
public static class SafetyCautions
{
    public static SafetyCaution WastingDisease { get; } = new(
        "game.cwd",
        "Chronic wasting disease",
        "Untested is not negative. Ask whether the area needs a test, and keep the animal apart until a result. Follow your wildlife agency.",
        "Not tested is not negative. One animal at a time; brain, cord, nodes and spleen stay uncut. Follow your state's rules.",
        "Not tested is not the same as not detected. Where your wildlife agency advises a test, wait for its result before you eat or share the meat.",
        "Michigan State University Extension 2022; Minnesota Department of Agriculture; CDC");

    public static SafetyCaution Lead { get; } = new(
        "game.lead",
        "Lead",
        "Fragments are too small to see, and grinding spreads them. Note where it was shot; the cutter trims wide and throws it out.",
        "Fragments too small to see lie far from the wound, and grinding spreads them. Cut at least 4 in around its path; throw out what is bruised, discoloured or dirty.",
        "Bullet fragments can be too small to see, and grinding spreads them. Children under six and pregnant women are most at risk.",
        "Wisconsin Department of Natural Resources; Oregon State University PNW 517");

    public static SafetyCaution Trichinae { get; } = new(
        "game.trichinae",
        "Trichinae",
        "Freezing, smoking and curing do not reliably kill them in bear and wild boar. Cook it through, and clean the grinder after it.",
        "Freezing, smoking and curing do not reliably kill them. The meat has to be cooked through; clean the grinder after it.",
        "Freezing, smoking and curing do not reliably kill them in bear and wild boar. Cook it through.",
        "Missouri Department of Conservation");

    public static IReadOnlyList<SafetyCaution> All { get; } = [WastingDisease, Lead, Trichinae];

    /// <summary>What goes for these animals together.</summary>
    public static IReadOnlyList<SafetyCaution> For(IEnumerable<Species> species)
    {
        var kinds = species.Distinct().ToList();
        List<SafetyCaution> cautions = [];
        if (kinds.Any(IsCervid))
            cautions.Add(WastingDisease);
        if (kinds.Any(IsGame))
            cautions.Add(Lead);
        if (kinds.Any(kind => kind is Species.Bear or Species.WildBoar))
            cautions.Add(Trichinae);
        return cautions;
    }

    /// <summary>The deer family, which chronic wasting disease goes for.</summary>
    public static bool IsCervid(Species species) =>
        species is Species.WhiteTailDeer or Species.MuleDeer or Species.Elk or Species.Moose;

    /// <summary>Shot in the wild; cooked to 160 °F throughout.</summary>
    public static bool IsGame(Species species) =>
        IsCervid(species) || species is Species.Pronghorn or Species.Bear or Species.WildBoar;
}
