using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Yields;

namespace ProcessorDesk.Web.Pages.Counter;

/// <summary>A short warning where it belongs, with who published it.</summary>
public sealed record CounterCaution(string Heading, string Text, string Source);

/// <summary>What the clerk and the owner should have in mind about these animals. Local rules go before all of it.</summary>
public static class CounterCautions
{
    public static IEnumerable<CounterCaution> For(IReadOnlyList<AnimalInput> all)
    {
        foreach (var animal in all)
        {
            if (TemperatureText.ParseShowingCold(animal.Surface).Try(out var surface, out _) && HangingGuidance.For(animal.Species).Judge(surface) is { } warm)
                yield return new CounterCaution("Warm", warm.Text, warm.Source == Forecasting.NonePublished ? "" : warm.Source + ".");
        }

        if (all.Any(animal => IsCervid(animal.Species) && animal.DiseaseTest is not (DiseaseTest.NotDetected or DiseaseTest.Detected)))
        {
            yield return new CounterCaution("Chronic wasting disease",
                "Untested is not negative. Ask whether the area needs a test, and keep the animal apart until a result. Follow your wildlife agency.",
                "Michigan State University Extension 2022; Minnesota Department of Agriculture.");
        }

        if (all.Any(animal => animal.Species is Species.Bear or Species.WildBoar))
        {
            yield return new CounterCaution("Trichinae",
                "Freezing, smoking and curing do not reliably kill them in bear and wild boar. Cook it through, and clean the grinder after it.",
                "Missouri Department of Conservation.");
        }

        if (all.Any(animal => IsGame(animal.Species)))
        {
            yield return new CounterCaution("Lead and bloodshot",
                "Fragments are too small to see, and grinding spreads them. Note where it was shot; the cutter trims wide and throws it out.",
                "Wisconsin Department of Natural Resources.");
        }
    }

    private static bool IsCervid(Species species) =>
        species is Species.WhiteTailDeer or Species.MuleDeer or Species.Elk or Species.Moose;

    private static bool IsGame(Species species) =>
        IsCervid(species) || species is Species.Pronghorn or Species.Bear or Species.WildBoar;
}
