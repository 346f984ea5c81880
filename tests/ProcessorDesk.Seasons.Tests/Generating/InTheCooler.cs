using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Yields;

namespace ProcessorDesk.Seasons.Tests.Generating;

/// <summary>Carcasses are hung, weighed hot and chilled, and wait for what they are held for.</summary>
internal static class InTheCooler
{
    public static void Expect(Season season, IReadOnlyList<AnimalInHand> animals, IReadOnlyList<JobInHand> jobs)
    {
        var dice = season.Dice;
        var takenIn = season.Now;
        foreach (var animal in animals)
        {
            season.Plan(takenIn + dice.Minutes(20, 90), "hang a carcass", StaffRole.Cutter, "Cooler", () => Hang(season, animal));
            if (dice.In(70))
                season.Plan(Morning(takenIn, 1) + dice.Minutes(0, 60), "hang a carcass", StaffRole.Cutter, "Cooler", () => WeighChilled(season, animal));
            if (animal.Animal.Holds.Count > 0)
                season.Plan(Morning(takenIn, 1) + dice.Minutes(90, 400), "change an animal", StaffRole.Clerk, "Counter", () => LearnMore(season, animal.Animal));
        }

        var cutDay = dice.Between(2, 5);
        foreach (var job in jobs)
            OnTheTable.Expect(season, job, Morning(takenIn, cutDay) + dice.Minutes(0, 240));
    }

    /// <summary>Eight by the shop's clock, some days after.</summary>
    public static DateTime Morning(DateTime from, int days) => from.Date.AddDays(days).AddHours(14);

    private static void Hang(Season season, AnimalInHand animal)
    {
        animal.Animal.Hang($"{season.Dice.Of(["A", "B", "C", "D", "E", "F"])}{season.Dice.Between(1, 12)}", season.Now);
        season.Changed(animal.Animal);
        Weigh(season, animal, WeighInKind.HotHanging, Weight.FromMilligrams(animal.Arrival.Milligrams / 100 * animal.Stock.Hanging));
    }

    private static void WeighChilled(Season season, AnimalInHand animal) =>
        Weigh(season, animal, WeighInKind.ChilledHanging, Weight.FromMilligrams(animal.Hanging.Milligrams / 1_000 * season.Dice.Between(970, 990)));

    private static void Weigh(Season season, AnimalInHand animal, WeighInKind kind, Weight about)
    {
        var rail = season.Floor.Settings.RailDivision;
        animal.Hanging = rail.Round(about);
        season.Add(WeighIn.OfAnimal(kind, animal.Animal, animal.Hanging, new Reading("rail", rail), season.Now, season.Hand.Id));
    }

    /// <summary>The tag turned up, or the laboratory called: the holds go by themselves.</summary>
    private static void LearnMore(Season season, Animal animal)
    {
        if (animal.Tag is null)
            animal.Identify($"NL-{animal.Id}", null, null, animal.HarvestedOn, animal.HarvestArea);
        if (animal.AwaitsResult)
            animal.RecordDiseaseTest(DiseaseTest.NotDetected, animal.SampleNumber, null, DateOnly.FromDateTime(season.Now));
        animal.LookAgain(HangingGuidance.For(animal.Species).WarnAbove, season.Now, season.Hand.Id);
        season.Changed(animal);
        foreach (var hold in animal.Holds)
            season.Changed(hold);
    }
}
