using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Safety;
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

        // A result that is there has its own path; the caution is for those without one.
        foreach (var caution in SafetyCautions.For(all.Where(animal => animal.DiseaseTest is not (DiseaseTest.NotDetected or DiseaseTest.Detected)).Select(animal => animal.Species))
            .Union(SafetyCautions.For(all.Select(animal => animal.Species)).Where(caution => caution != SafetyCautions.WastingDisease)))
            yield return new CounterCaution(caution.Heading, caution.AtCounter, caution.Source + ".");
    }
}
