namespace ProcessorDesk.Trade.Yields;

/// <summary>How long a carcass may hang, how cold, and who says so. An agency's own figure is handed in with "with".</summary>
/// <param name="Id">Lasting name; a shop's own figure names the one it stands for.</param>
/// <param name="Species">The species it is used for.</param>
/// <param name="UsualFrom">First day on which it is usual to cut; null where nothing is published.</param>
/// <param name="UsualTo">Last day on which it is usual to cut; zero where that meat is not aged.</param>
/// <param name="Longest">Day past which it should not hang; null where nothing is published.</param>
/// <param name="WarnAbove">Warmest air or meat that passes without a warning.</param>
/// <param name="Source">Who published it.</param>
/// <param name="Mark">How the source was read: A, B, C, M, or "–".</param>
public sealed record HangingGuidance(
    string Id, IReadOnlyList<Species> Species, int? UsualFrom, int? UsualTo, int? Longest, Temperature WarnAbove, string Source, string Mark)
{
    private const string Indiana = "Indiana Board of Animal Health";

    /// <summary>Above this anything that hangs is warned about.</summary>
    public static Temperature WarnAnythingAbove { get; } = Temperature.FromFahrenheit(41m);

    public static IReadOnlyList<HangingGuidance> All { get; } =
    [
        new("hanging-deer", [Trade.Species.WhiteTailDeer, Trade.Species.MuleDeer], 3, 5, 7, Temperature.FromFahrenheit(40m),
            "Michigan State University Extension (3 to 5 days at or under 40 °F, no longer than 5 to 7)", "A"),
        new("hanging-beef-lamb", [Trade.Species.Beef, Trade.Species.Lamb], 7, 10, null, Temperature.FromFahrenheit(38m),
            Indiana + " (7 to 10 days at 34 to 38 °F)", "A"),
        new("hanging-hog", [Trade.Species.Hog], 0, 0, null, WarnAnythingAbove, Indiana + " (pork is not aged)", "A"),
    ];

    /// <summary>The guidance for a species; without published days only the general warning temperature holds.</summary>
    public static HangingGuidance For(Species species) =>
        All.FirstOrDefault(guidance => guidance.Species.Contains(species))
        ?? new HangingGuidance("hanging-none", [species], null, null, null, WarnAnythingAbove, Forecasting.NonePublished, "–");

    /// <summary>Days hung: none on the day it was hung.</summary>
    public static int DaysHung(DateOnly hungOn, DateOnly today) => Math.Max(0, today.DayNumber - hungOn.DayNumber);

    /// <summary>What the guidance says of a carcass hung on a day. The day is the shop's own.</summary>
    public HangingWord Say(DateOnly hungOn, DateOnly today)
    {
        var days = DaysHung(hungOn, today);
        var hung = days == 1 ? "Hung 1 day" : $"Hung {days} days";
        if (UsualTo is not { } last || UsualFrom is not { } first)
            return new HangingWord(days, HangingStanding.NoGuidance, $"{hung}; no days are published for this species.", null);
        var (standing, advice) = days switch
        {
            _ when last == 0 => (HangingStanding.CutNow, "this meat is not aged: cut when chilled through"),
            _ when days > (Longest ?? last) => (HangingStanding.TooLong, $"past the {Longest ?? last} days of the guidance: look, smell, then cut or freeze"),
            _ when days > last => (HangingStanding.CutNow, $"past the usual {first} to {last} days: cut or freeze by day {Longest}"),
            _ when days >= first => (HangingStanding.InTime, $"ready: cut or freeze by day {last}"),
            _ => (HangingStanding.NotYet, $"usual from day {first} to day {last}"),
        };
        return new HangingWord(days, standing, $"{hung}; {advice}.", (Longest ?? last) - days);
    }

    /// <summary>A warning where the air or the meat is too warm; null where it is cold enough.</summary>
    public Finding? Judge(Temperature reading) =>
        reading <= WarnAbove
            ? null
            : new Finding("Temperature",
                $"{reading.Print()} is above {WarnAbove.Print()} for hanging this species. Cool it down or move the carcass, and look again.",
                reading.Print(), "at most " + WarnAbove.Print(), Source);
}
